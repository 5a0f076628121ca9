/** The first place where a text stops being JSON. */
export interface JsonFault {
  /** Characters before the fault. */
  readonly offset: number;
  /** What was expected there, in plain words. */
  readonly message: string;
}

type Expecting = 'value' | 'valueOrClose' | 'key' | 'keyOrClose' | 'colon' | 'commaOrClose' | 'end';

interface Scan {
  readonly text: string;
  offset: number;
  expecting: Expecting;
  /** The brackets that are open, innermost last. */
  readonly open: ('{' | '[')[];
}

const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

const EXPECTED: Readonly<Record<Expecting, string>> = {
  value: 'a value was expected here',
  valueOrClose: 'a value or a closing ] was expected here',
  key: 'a name in double quotes was expected here',
  keyOrClose: 'a name in double quotes or a closing } was expected here',
  colon: 'a colon was expected here',
  commaOrClose: 'a comma or a closing bracket was expected here',
  end: 'the text should have ended here',
};

/**
 * Where and why a text is not JSON; undefined when it is.
 * Engines word and place this differently, so the planner looks for itself. It keeps its own stack and takes any depth.
 */
export function findJsonFault(text: string): JsonFault | undefined {
  const scan: Scan = { text, offset: 0, expecting: 'value', open: [] };
  for (;;) {
    skipSpace(scan);
    if (scan.offset >= text.length) {
      return scan.expecting === 'end' ? undefined : { offset: scan.offset, message: 'the text ends too early' };
    }
    const fault = takeToken(scan);
    if (fault) return fault;
  }
}

function skipSpace(scan: Scan): void {
  while (' \t\n\r'.includes(scan.text[scan.offset] ?? 'x')) scan.offset += 1;
}

function takeToken(scan: Scan): JsonFault | undefined {
  const character = scan.text[scan.offset] ?? '';
  const { expecting } = scan;
  if (expecting === 'colon' && character === ':') return step(scan, 1, 'value');
  if (expecting === 'commaOrClose' && character === ',')
    return step(scan, 1, innermost(scan) === '{' ? 'key' : 'value');
  if (character === '}' || character === ']') return takeClose(scan, character);
  if (expecting === 'key' || expecting === 'keyOrClose') {
    return character === '"' ? takeString(scan, 'colon') : faultHere(scan);
  }
  if (expecting === 'value' || expecting === 'valueOrClose') return takeValue(scan, character);
  return faultHere(scan);
}

function takeValue(scan: Scan, character: string): JsonFault | undefined {
  if (character === '{' || character === '[') {
    scan.open.push(character);
    return step(scan, 1, character === '{' ? 'keyOrClose' : 'valueOrClose');
  }
  if (character === '"') return takeString(scan, afterValue(scan));
  const length = matchLength(NUMBER, scan) || matchLength(WORD, scan);
  return length > 0 ? step(scan, length, afterValue(scan)) : faultHere(scan);
}

function takeClose(scan: Scan, character: '}' | ']'): JsonFault | undefined {
  const opener = character === '}' ? '{' : '[';
  const empty = character === '}' ? 'keyOrClose' : 'valueOrClose';
  const allowed = scan.expecting === 'commaOrClose' || scan.expecting === empty;
  if (!allowed || innermost(scan) !== opener) return faultHere(scan);
  scan.open.pop();
  return step(scan, 1, afterValue(scan));
}

function takeString(scan: Scan, next: Expecting): JsonFault | undefined {
  const { text } = scan;
  let at = scan.offset + 1;
  for (;;) {
    const character = text[at];
    if (character === undefined) return { offset: scan.offset, message: 'this text has no closing quote' };
    if (character === '"') return step(scan, at + 1 - scan.offset, next);
    if (character < ' ') return { offset: at, message: 'a line break or control sign stands inside quotes' };
    if (character === '\\') {
      ESCAPE.lastIndex = at;
      const length = ESCAPE.exec(text)?.[0].length ?? 0;
      if (length === 0) return { offset: at, message: 'a backslash is followed by a sign it cannot stand before' };
      at += length;
    } else at += 1;
  }
}

function matchLength(pattern: RegExp, scan: Scan): number {
  pattern.lastIndex = scan.offset;
  return pattern.exec(scan.text)?.[0].length ?? 0;
}

function step(scan: Scan, length: number, expecting: Expecting): undefined {
  scan.offset += length;
  scan.expecting = expecting;
}

function innermost(scan: Scan): '{' | '[' | undefined {
  return scan.open.at(-1);
}

function afterValue(scan: Scan): Expecting {
  return scan.open.length === 0 ? 'end' : 'commaOrClose';
}

function faultHere(scan: Scan): JsonFault {
  return { offset: scan.offset, message: EXPECTED[scan.expecting] };
}
