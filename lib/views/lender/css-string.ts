/** A text as a string of a style sheet: nothing in it can end the string or the sheet. */
export function cssString(text: string): string {
  const safe = text.replace(/[^\p{L}\p{N} .,:;()&%+·-]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `);
  return `"${safe}"`;
}
