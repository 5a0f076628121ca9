import { fieldsOf, keyOf, type Section } from '../../inputs/register.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { countOf, NONE } from '../format-number.ts';
import type { ShownAs } from '../format-quantity.ts';
import { type InputNote, inputNote } from '../input-note.ts';
import { assumptionFigure } from './assumption-figure.ts';
import { tableBlock, words } from './document-text.ts';
import type { DocumentRow, DocumentSection, LenderSources } from './document-types.ts';
import { forLender } from './for-lender.ts';

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
    { heading: 'Money', parent: 'financing', section: 'financing' },
    ...plan.financing.loans.map(
      ({ name }, k) => ({ heading: `Loan: ${name}`, parent: `financing.loans.${k}`, section: 'loan' }) as const,
    ),
    { heading: 'Shop', parent: 'site', section: 'site' },
    { heading: 'People', parent: 'crew', section: 'crew' },
    ...listed,
    ...(plan.freezer ? [{ heading: 'Freezer', parent: 'freezer', section: 'freezer' } as const] : []),
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

function rowOf({ plan, shown }: LenderSources, { path, note }: Given, cited: readonly string[]): DocumentRow {
  const { label, origin, source } = note;
  const { value, range } = assumptionFigure(plan, path, shown) ?? note;
  const place = source === '' ? '' : `[${cited.indexOf(source) + 1}]`;
  const said = [place, note.note].filter((text) => text !== '').join(' ');
  return { cells: [forLender(label), value, range, origin, said], kind: origin === 'guess' ? 'guess' : 'plain' };
}

function citedIn(given: readonly Given[]): readonly string[] {
  return [...new Set(given.map(({ note }) => note.source).filter((source) => source !== ''))];
}

/** Sources that the listed values cite, in the order in which they are first cited. */
export function citedBy(sources: LenderSources): readonly string[] {
  const { plan, shown } = sources;
  return citedIn(partsOf(sources).flatMap((part) => givenIn(part, plan, shown)));
}

/** Every value that the figures rest on, with where it comes from. */
export function assumptionSection(sources: LenderSources): DocumentSection {
  const { plan, shown } = sources;
  const parts = partsOf(sources).map((part) => ({ heading: part.heading, given: givenIn(part, plan, shown) }));
  const all = parts.flatMap(({ given }) => given);
  const cited = citedIn(all);
  const count = (origin: string) => all.filter(({ note }) => note.origin === origin).length;
  const lead = `${countOf(all.length, 'value')} stand behind these figures: ${count('measured')} measured, ${count('quoted')} quoted, ${count('handbook')} from handbooks and ${count('guess')} guesses. Guesses are shaded and should be replaced first. Numbers in brackets are of the sources at the end.`;
  const rows = parts
    .filter(({ given }) => given.length > 0)
    .flatMap(({ heading, given }): DocumentRow[] => [
      { cells: [heading], kind: 'heading' },
      ...given.map((one) => rowOf(sources, one, cited)),
    ]);
  return {
    id: 'assumptions',
    title: 'Assumptions and their origin',
    blocks: [
      words(lead),
      tableBlock({
        caption: 'Values behind the figures',
        head: ['What', 'Value', 'Range', 'Origin', 'Source and note'],
        rows,
        figuresFrom: 5,
        widths: [27, 15, 18, 10, 30],
      }),
    ],
  };
}
