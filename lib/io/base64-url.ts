import { fail, type Result, succeed } from '../result.ts';

/** Bytes turned into characters at a time; a call takes only so many arguments. */
const PIECE = 8192;

/** Bytes as text of letters, digits, - and _ (RFC 4648, section 5), without padding. */
export function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (let at = 0; at < bytes.length; at += PIECE) binary += String.fromCharCode(...bytes.subarray(at, at + PIECE));
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes that such a text stands for; fails on any other character and on a length that no bytes have. */
export function fromBase64Url(text: string): Result<Uint8Array<ArrayBuffer>, 'notBase64'> {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return fail('notBase64');
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return succeed(Uint8Array.from(binary, (character) => character.charCodeAt(0)));
}
