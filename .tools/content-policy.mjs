import { createHash } from 'node:crypto';

/** CSP source expressions, one for each different inline script of a page. */
export function scriptHashes(html) {
  const scripts = [...html.matchAll(/<script(?![^>]*\ssrc=)[^>]*>([\s\S]*?)<\/script>/g)].map((match) => match[1]);
  return [...new Set(scripts)].map((text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`);
}

/**
 * Content security policy of one page: its own files and its own inline scripts, nothing from elsewhere.
 * Inline styles are let through because the sheet's theme and the charts are written with them.
 */
export function contentPolicy(html) {
  return [
    "default-src 'none'",
    ["script-src 'self'", ...scriptHashes(html)].join(' '),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
    "object-src 'none'",
  ].join('; ');
}
