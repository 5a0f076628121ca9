/** The planner speaks to the owner; these papers speak of the owner to somebody else. The longer words come first. */
const TURNED: readonly (readonly [RegExp, string])[] = [
  [/\bYou pay after\b/g, 'Suppliers are paid after'],
  [/\b(those|the one) you have\b/g, '$1 in use'],
  [/\byours\b/g, "the shop's"],
  [/\bnone in your list\b/g, 'none quoted'],
  [/\bin your list\b/g, 'quoted'],
  [/\bYour\b/g, "The owner's"],
  [/\byour\b/g, "the owner's"],
  [/\bbefore you buy\b/g, 'before anything is bought'],
];

/** A text written for the owner, as a lender reads it. */
export function forLender(text: string): string {
  return TURNED.reduce((turned, [from, to]) => turned.replace(from, to), text);
}
