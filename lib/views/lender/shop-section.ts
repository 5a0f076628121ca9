import type { Bottleneck } from '../../insight/insight-types.ts';
import type { OutputGroup } from '../../model/outputs/output-field.ts';
import { OUTPUTS } from '../../model/outputs.ts';
import type { ScenarioResult } from '../../model/scenario-result.ts';
import type { Scenario } from '../../plan/plan-types.ts';
import { countOf } from '../format-number.ts';
import { quantityText, unitText } from '../format-quantity.ts';
import { reliefView } from '../relief-view.ts';
import { weekView } from '../week-view.ts';
import { outputText, plain, tableBlock, words } from './document-text.ts';
import type { DocumentBlock, DocumentRow, DocumentSection, LenderSources } from './document-types.ts';

function shopLead({ plan, today, shown }: LenderSources): string {
  const { site } = plan;
  const text = (id: string) => outputText(id, today, shown);
  return `${site.shopName} in ${site.place} dries food in ${countOf(today.chambers, 'chamber')} on ${countOf(today.pumps, 'vacuum pump')}. An average week brings ${text('batches')} batches and ${text('dryOut')} of dried product, with ${text('handsOn')} of work at the chambers; it leaves ${text('contribution')} after running cost.`;
}

function limitBlocks(
  { plan, shown }: LenderSources,
  scenario: Scenario,
  bottleneck: Bottleneck | null,
): readonly DocumentBlock[] {
  if (!bottleneck) return [words('What limits this set-up has not been looked for.')];
  const view = reliefView(bottleneck, plan, scenario, shown);
  return [
    words(`${view.finding}.`),
    tableBlock({
      caption: `${view.table.caption}; each line is a fresh run of the week with a quarter more of one thing`,
      head: view.table.head,
      rows: view.table.rows.map((cells) => plain(...cells)),
      figuresFrom: 1,
      wordsIn: [3],
    }),
  ];
}

/** The shop as it is, and what holds it back. */
export function shopSection(sources: LenderSources): DocumentSection {
  const today = sources.plan.scenarios[0] ?? sources.scenario;
  return {
    id: 'shop',
    title: 'The shop and what limits it now',
    blocks: [words(shopLead(sources)), ...limitBlocks(sources, today, sources.todayBottleneck)],
  };
}

const SHOWN_GROUPS: readonly (readonly [OutputGroup, string])[] = [
  ['throughput', 'Throughput'],
  ['vacuum', 'Vacuum and power'],
];

function comparedRows({ today, result, shown }: LenderSources): DocumentRow[] {
  return SHOWN_GROUPS.flatMap(([group, heading]) => [
    { cells: [heading], kind: 'heading' } as const,
    ...OUTPUTS.filter((output) => output.group === group).map((output) => {
      const text = (of: ScenarioResult) => quantityText(output.read(of), output.dimension, shown);
      return plain(output.label, unitText(output.dimension, shown), text(today), text(result));
    }),
  ]);
}

function isToday({ plan, scenario }: LenderSources): boolean {
  return plan.scenarios[0]?.id === scenario.id;
}

function expansionLead(sources: LenderSources): string {
  const { result, today, scenario, shown } = sources;
  if (isToday(sources)) return 'This plan goes on with the shop as it is.';
  const note = scenario.note.trim();
  const change = `${result.name} runs ${countOf(result.chambers, 'chamber')} on ${countOf(result.pumps, 'vacuum pump')}, where there are ${countOf(today.chambers, 'chamber')} on ${countOf(today.pumps, 'vacuum pump')} today.`;
  const rise = `The week brings ${outputText('dryOut', result, shown)} of dried product instead of ${outputText('dryOut', today, shown)}.`;
  return [note, change, rise].filter((text) => text !== '').join(' ');
}

/** What is to change, and the evidence that it yields what is claimed. */
export function expansionSection(sources: LenderSources): DocumentSection {
  const { plan, scenario, result, shown } = sources;
  const week = weekView(plan, scenario, result.plant, shown);
  return {
    id: 'expansion',
    title: 'The expansion and its capacity',
    blocks: [
      words(expansionLead(sources)),
      words(
        'Capacity is not a rating but a simulation: every load is followed through freezing, pump-down, drying and handling, chambers on one pump press on each other, and people work their shifts.',
      ),
      tableBlock({
        caption: 'An average week, simulated',
        head: ['', 'Unit', 'Today', result.name],
        rows: comparedRows(sources),
        figuresFrom: 2,
      }),
      { kind: 'heading', text: `A typical week: ${week.finding}` },
      { kind: 'figure', figure: 'week' },
      { kind: 'heading', text: 'What limits it then' },
      ...limitBlocks(sources, scenario, sources.bottleneck),
    ],
  };
}
