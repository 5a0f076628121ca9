import { type Finding, fail, type Result, succeed } from '../result.ts';
import { commandFinding } from './command-finding.ts';

/** What the command is asked to do. */
export type EvaluateOptions =
  | { readonly kind: 'help' }
  | {
      readonly kind: 'evaluate';
      readonly file: string;
      /** Id or name of the only scenario wanted; null for all. */
      readonly scenario: string | null;
      /** File to write to; null for the standard output. */
      readonly out: string | null;
    };

interface Sorted {
  readonly files: readonly string[];
  readonly settings: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
}

const SETTINGS: readonly string[] = ['--scenario', '--out'];
const SEE_HELP = 'Run it with --help to see how it is called.';

function unknownOption(word: string): Finding {
  return commandFinding(word, word, `There is no option ${word}.`, `Use ${SETTINGS.join(' or ')}. ${SEE_HELP}`);
}

function missingValue(name: string): Finding {
  return commandFinding(name, '', `${name} has nothing after it.`, SEE_HELP);
}

function givenTwice(name: string, value: string): Finding {
  return commandFinding(name, value, `${name} is given more than once.`, 'Give it once.');
}

/** An option word as its name and, where it is written with an equals sign, its value. */
function splitOption(word: string): readonly [name: string, value: string | undefined] {
  const at = word.indexOf('=');
  return at < 0 ? [word, undefined] : [word.slice(0, at), word.slice(at + 1)];
}

/** Words told apart into files and settings. After a lone -- every word is a file. */
function sortWords(words: readonly string[]): Sorted {
  const files: string[] = [];
  const settings = new Map<string, string>();
  const findings: Finding[] = [];
  const waiting = [...words];
  for (let word = waiting.shift(); word !== undefined; word = waiting.shift()) {
    if (word === '--') files.push(...waiting.splice(0));
    else if (!word.startsWith('-') || word === '-') files.push(word);
    else takeOption(word, waiting, settings, findings);
  }
  return { files, settings, findings };
}

function takeOption(word: string, waiting: string[], settings: Map<string, string>, findings: Finding[]): void {
  const [name, attached] = splitOption(word);
  if (!SETTINGS.includes(name)) {
    findings.push(unknownOption(name));
    return;
  }
  const value = attached ?? (waiting[0]?.startsWith('--') ? undefined : waiting.shift());
  if (value === undefined || value === '') findings.push(missingValue(name));
  else if (settings.has(name)) findings.push(givenTwice(name, value));
  else settings.set(name, value);
}

function fileFindings(files: readonly string[]): readonly Finding[] {
  if (files.length === 1 && files[0] !== '') return [];
  if (files.length < 2) return [commandFinding('PLAN.json', '', 'No plan file is named.', SEE_HELP)];
  const value = files.slice(0, 5).join(' ');
  return [commandFinding('PLAN.json', value, 'More than one plan file is named.', 'Give one at a time.')];
}

/**
 * What the words after the command ask for, or all that is wrong with them.
 * @param words as they were typed, the command itself left out
 */
export function readOptions(words: readonly string[]): Result<EvaluateOptions, readonly Finding[]> {
  if (words.includes('--help') || words.includes('-h')) return succeed({ kind: 'help' });
  const { files, settings, findings } = sortWords(words);
  const [file] = files;
  const all = [...findings, ...fileFindings(files)];
  if (all.length > 0 || file === undefined) return fail(all);
  return succeed({
    kind: 'evaluate',
    file,
    scenario: settings.get('--scenario') ?? null,
    out: settings.get('--out') ?? null,
  });
}
