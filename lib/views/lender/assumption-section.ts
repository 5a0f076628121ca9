import { fieldsOf, keyOf, type Section } from '../../inputs/register.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { countOf } from '../format-number.ts';
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

function notesOf({ parent, section }: Part, plan: Plan, shown: ShownAs): readonly InputNote[] {
  return fieldsOf(section).map((field) => inputNote(plan, `${parent}.${keyOf(field)}`, shown));
}

function rowOf({ label, value, range, origin, source, note }: InputNote): DocumentRow {
  const said = [source, note].filter((text) => text !== '').join(' ');
  return { cells: [label, value, range, origin, said], kind: origin === 'guess' ? 'guess' : 'plain' };
}

function isGiven({ origin, value }: InputNote): boolean {
  return origin !== 'your choice' && value !== '—';
}

/** Every value that the figures rest on, with where it comes from. */
export function assumptionSection(sources: LenderSources): DocumentSection {
  const { plan, shown } = sources;
  const parts = partsOf(sources).map((part) => ({ part, notes: notesOf(part, plan, shown).filter(isGiven) }));
  const all = parts.flatMap(({ notes }) => notes);
  const count = (origin: string) => all.filter((note) => note.origin === origin).length;
  const lead = `${countOf(all.length, 'value')} stand behind these figures: ${count('measured')} measured, ${count('quoted')} quoted, ${count('handbook')} from handbooks and ${count('guess')} guesses. Guesses are marked and should be replaced first.`;
  const rows = parts
    .filter(({ notes }) => notes.length > 0)
    .flatMap(({ part, notes }): DocumentRow[] => [{ cells: [part.heading], kind: 'heading' }, ...notes.map(rowOf)]);
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
      }),
    ],
  };
}

/** Bibliography keys that the listed values cite. */
export function citedBy(sources: LenderSources): readonly string[] {
  const { plan, shown } = sources;
  const notes = partsOf(sources).flatMap((part) => notesOf(part, plan, shown));
  return [...new Set(notes.map((note) => note.source).filter((source) => source !== ''))];
}
