import { createHash } from 'node:crypto';
import { expect, it } from 'vitest';
import { contentPolicy, scriptHashes } from '../../.tools/content-policy.mjs';

const hashOf = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

it('names every different inline script once, in the page as it is written', () => {
  const html = '<script>a()</script><script id="x">\nb("é")\n</script><script>a()</script>';
  expect(scriptHashes(html)).toEqual([hashOf('a()'), hashOf('\nb("é")\n')]);
});

it('leaves scripts that are fetched to the rule for the own origin', () => {
  expect(scriptHashes('<script src="/a.js" async=""></script><script async src="/b.js"></script>')).toEqual([]);
});

it('lets no script run that the page did not come with', () => {
  const policy = contentPolicy('<script>a()</script>');
  expect(policy).toContain(`script-src 'self' ${hashOf('a()')};`);
  expect(policy).not.toMatch(/script-src[^;]*unsafe|https?:|\*/);
  expect(policy).toContain("default-src 'none'");
});
