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
export function pagePolicy(html) {
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
    "object-src 'none'",
  ].join('; ');
}

/** Who may show the page in a frame: nobody. Browsers take this from a header only, not from the page itself. */
const FRAMES = "frame-ancestors 'none'";

/** The policy of a page as a header. */
export function contentPolicy(html) {
  return `${pagePolicy(html)}; ${FRAMES}`;
}

/**
 * The policy of everything that is no page. Workers go by the policy of their own script and not by that of the page that
 * starts them; a picture that is opened by itself is a page of its own.
 */
export const FILE_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'unsafe-inline'",
  "connect-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  FRAMES,
].join('; ');
