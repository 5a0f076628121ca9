import { fieldsOf, keyOf, type Section } from '../../inputs/register.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { isRawObject, valueAt } from '../../plan/raw-value.ts';
import { countOf, NONE } from '../format-number.ts';
import type { ShownAs } from '../format-quantity.ts';
import { type InputNote, inputNote } from '../input-note.ts';
import { tableBlock, words } from './document-text.ts';
import type { DocumentRow, DocumentSection, LenderSources } from './document-types.ts';

/** A part of the plan whose entries are listed. */
interface Part {
  readonly heading: string;
  readonly parent: string;
  readonly section: Section;
}

interface Used {
  readonly products: ReadonlySet<string>;
  readonly chambers: ReadonlySet<string>;
  readonly pumps: ReadonlySet<string>;
  readonly hoses: ReadonlySet<string>;
}

/** What today and the chosen scenario make use of. */
function usedBy({ plan, scenario }: LenderSources): Used {
  const both = [plan.scenarios[0] ?? scenario, scenario];
  const pumps = both.flatMap(({ pump, roughingPump }) => (roughingPump === null ? [pump] : [pump, roughingPump]));
  return {
    products: new Set(both.flatMap(({ mix }) => mix.map((share) => share.product))),
    chambers: new Set(both.flatMap(({ chambers }) => chambers.map((entry) => entry.chamber))),
    pumps: new Set(pumps),
    hoses: new Set(both.map(({ hose }) => hose)),
  };
}

const LISTS = [
  ['products', 'product', 'Product'],
  ['chambers', 'chamber', 'Chamber'],
  ['pumps', 'pump', 'Pump'],
  ['hoses', 'hose', 'Hose'],
] as const;

function partsOf(sources: LenderSources): readonly Part[] {
  const { plan } = sources;
  const used = usedBy(sources);
  const listed = LISTS.flatMap(([list, section, noun]) =>
    plan[list].flatMap(({ id, name }, k) =>
      used[list].has(id) ? [{ heading: `${noun}: ${name}`, parent: `${list}.${k}`, section }] : [],
    ),
  );
  return [
    ...listed,
    ...(plan.freezer ? [{ heading: 'Freezer', parent: 'freezer', section: 'freezer' } as const] : []),
    { heading: 'Shop', parent: 'site', section: 'site' },
    { heading: 'People', parent: 'crew', section: 'crew' },
    { heading: 'Money', parent: 'financing', section: 'financing' },
    ...plan.financing.loans.map(
      ({ name }, k) => ({ heading: `Loan: ${name}`, parent: `financing.loans.${k}`, section: 'loan' }) as const,
    ),
  ];
}

/** A value with its place in the plan. */
interface Given {
  readonly path: string;
  readonly note: InputNote;
}

/** What a loan of each kind makes no use of. */
const IDLE = {
  share: ['amount'],
  amount: ['share'],
  running: ['share', 'fee', 'startMonth'],
} as const;

function isIdle({ section, parent }: Part, key: string, plan: Plan): boolean {
  if (section !== 'loan') return false;
  const loan = plan.financing.loans[Number(parent.split('.').at(-1))];
  const idle: readonly string[] = loan ? IDLE[loan.basis] : [];
  return idle.includes(key);
}

function givenIn(part: Part, plan: Plan, shown: ShownAs): readonly Given[] {
  const { parent, section } = part;
  return fieldsOf(section)
    .filter((field) => !isIdle(part, keyOf(field), plan))
    .map((field) => `${parent}.${keyOf(field)}`)
    .map((path) => ({ path, note: inputNote(plan, path, shown) }))
    .filter(({ note }) => note.origin !== 'your choice' && note.value !== NONE);
}

/** A figure of so many zeros is easier to read in the unit and the power of ten in which it was entered. */
const TINY = /^[^1-9]*0\.000/;

/** Times and plain factors are read more easily as they were entered: 6 d and not 144 h, 1.25 and not 125 %. */
function isAsEntered(path: string, { value }: InputNote, unit: unknown): boolean {
  const field = fieldAtPath(path);
  const isTime = field !== undefined && 'dimension' in field && field.dimension === 'time';
  return TINY.test(value) || unit === '1' || isTime;
}

/** Zeros behind the last digit that means something are left out where there are more than two decimals. */
function withoutZeros(text: string): string {
  return text.replace(/\.(\d{3,})/g, (_, digits: string) => `.${digits}`.replace(/\.?0+$/, ''));
}

function valueAndRange(plan: Plan, { path, note }: Given): readonly [string, string] {
  const raw = valueAt(plan, path.split('.'));
  if (!isRawObject(raw) || !isAsEntered(path, note, raw.unit))
    return [withoutZeros(note.value), withoutZeros(note.range)];
  const { low, high } = raw;
  const entered = note.entered.replace(/ 1$/, '');
  return [entered, low === undefined || high === undefined ? '' : `${String(low)} to ${String(high)}`];
}

function rowOf(plan: Plan, given: Given, cited: readonly string[]): DocumentRow {
  const { label, origin, source, note } = given.note;
  const place = source === '' ? '' : `[${cited.indexOf(source) + 1}]`;
  const said = [place, note].filter((text) => text !== '').join(' ');
  return { cells: [label, ...valueAndRange(plan, given), origin, said], kind: origin === 'guess' ? 'guess' : 'plain' };
}

/** Sources that the listed values cite, in the order in which they are first cited. */
export function citedBy(sources: LenderSources): readonly string[] {
  const { plan, shown } = sources;
  const given = partsOf(sources).flatMap((part) => givenIn(part, plan, shown));
  return [...new Set(given.map(({ note }) => note.source).filter((source) => source !== ''))];
}

/** Every value that the figures rest on, with where it comes from. */
export function assumptionSection(sources: LenderSources): DocumentSection {
  const { plan, shown } = sources;
  const cited = citedBy(sources);
  const parts = partsOf(sources).map((part) => ({ heading: part.heading, given: givenIn(part, plan, shown) }));
  const all = parts.flatMap(({ given }) => given);
  const count = (origin: string) => all.filter(({ note }) => note.origin === origin).length;
  const lead = `${countOf(all.length, 'value')} stand behind these figures: ${count('measured')} measured, ${count('quoted')} quoted, ${count('handbook')} from handbooks and ${count('guess')} guesses. Guesses are shaded and should be replaced first. Numbers in brackets are of the sources at the end.`;
  const rows = parts
    .filter(({ given }) => given.length > 0)
    .flatMap(({ heading, given }): DocumentRow[] => [
      { cells: [heading], kind: 'heading' },
      ...given.map((one) => rowOf(plan, one, cited)),
    ]);
  return {
    id: 'assumptions',
    title: 'Assumptions and where they come from',
    blocks: [
      words(lead),
      tableBlock({
        caption: 'Values behind the figures',
        head: ['What', 'Value', 'Range', 'Origin', 'Source and note'],
        rows,
        figuresFrom: 5,
        widths: [27, 17, 21, 10, 25],
      }),
    ],
  };
}
