import { fail, type Result, succeed } from '../result.ts';
import { formatFixed } from './format-number.ts';
import { matchWords } from './match-words.ts';

/** A share of all batches [%] by product. */
export interface MixEntry {
  readonly product: string;
  readonly share: number;
}

export interface NamedProduct {
  readonly id: string;
  readonly name: string;
}

/** What is wrong with a text and what mends it. */
export interface TextFault {
  readonly problem: string;
  readonly remedy: string;
}

/** Shares that add up to 100 % within this many points are taken as meant. */
const ROUNDING = 0.5;

/** The mix as text: "Strawberry 40 %, Soup 60 %". */
export function mixText(mix: readonly MixEntry[], products: readonly NamedProduct[]): string {
  const nameOf = (id: string) => products.find((product) => product.id === id)?.name ?? id;
  return mix
    .filter((entry) => entry.share > 0 || mix.length === 1)
    .map((entry) => `${nameOf(entry.product)} ${shareText(entry.share)} %`)
    .join(', ');
}

function shareText(share: number): string {
  return formatFixed(share, Number.isInteger(share) ? 0 : 1);
}

interface Part {
  readonly name: string;
  readonly share: number;
}

const NAME_FIRST = /^(.*[^\s:=])\s*[:=]?\s+(-?\d+(?:\.\d+)?)\s*%?$/;
const SHARE_FIRST = /^(-?\d+(?:\.\d+)?)\s*%\s*(?:of\s+)?(\S.*)$/;

function readPart(text: string): Part | null {
  const share = SHARE_FIRST.exec(text);
  if (share) return { name: share[2] ?? '', share: Number(share[1]) };
  const name = NAME_FIRST.exec(text);
  return name ? { name: name[1] ?? '', share: Number(name[2]) } : null;
}

function findProduct(name: string, products: readonly NamedProduct[]): NamedProduct | undefined {
  return matchWords(name, products, (product) => product.name);
}

function namesOf(products: readonly NamedProduct[]): string {
  return products.map((product) => product.name).join(', ');
}

function unknownProduct(name: string, products: readonly NamedProduct[]): TextFault {
  return {
    problem: `There is no product called "${name.trim()}".`,
    remedy: `Use one of: ${namesOf(products)}.`,
  };
}

function checkSum(mix: readonly MixEntry[]): TextFault | null {
  const sum = mix.reduce((total, entry) => total + entry.share, 0);
  if (Math.abs(sum - 100) <= ROUNDING) return null;
  const missing = formatFixed(Math.abs(100 - sum), Number.isInteger(sum) ? 0 : 1);
  const remedy = sum < 100 ? `Give out ${missing} % more.` : `Take ${missing} % away.`;
  return { problem: `The shares add up to ${shareText(sum)} %.`, remedy };
}

function checkShares(mix: readonly MixEntry[]): TextFault | null {
  if (mix.some((entry) => entry.share < 0)) {
    return { problem: 'A share is below zero.', remedy: 'Write shares from 0 to 100 %.' };
  }
  if (new Set(mix.map((entry) => entry.product)).size < mix.length) {
    return { problem: 'A product is named twice.', remedy: 'Name each product once.' };
  }
  return checkSum(mix);
}

/** Small rounding differences, as in three times 33.3 %, are spread so that the shares add up to 100 exactly. */
function scaledTo100(mix: readonly MixEntry[]): MixEntry[] {
  const sum = mix.reduce((total, entry) => total + entry.share, 0);
  return mix.map((entry) => ({ ...entry, share: sum === 100 ? entry.share : (entry.share * 100) / sum }));
}

function readMix(parts: readonly string[], products: readonly NamedProduct[]): Result<MixEntry[], TextFault> {
  const mix: MixEntry[] = [];
  for (const text of parts) {
    const alone = parts.length === 1 && findProduct(text, products) ? { name: text, share: 100 } : null;
    const part = alone ?? readPart(text);
    if (!part) return fail({ problem: `"${text}" has no share.`, remedy: 'Write it as "Name 40 %".' });
    const product = findProduct(part.name, products);
    if (!product) return fail(unknownProduct(part.name, products));
    mix.push({ product: product.id, share: part.share });
  }
  return succeed(mix);
}

/**
 * The mix a text means: products by name or by a part of it that no other has, each with its share, parted by commas, semicolons or
 * line ends. A single name alone means all of it.
 */
export function parseMixText(text: string, products: readonly NamedProduct[]): Result<readonly MixEntry[], TextFault> {
  const parts = text
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  if (parts.length === 0) {
    return fail({
      problem: 'The mix is empty.',
      remedy: `Name what is made, such as "${products[0]?.name ?? ''} 100 %".`,
    });
  }
  const read = readMix(parts, products);
  if (!read.ok) return read;
  const fault = checkShares(read.value);
  return fault ? fail(fault) : succeed(scaledTo100(read.value));
}
