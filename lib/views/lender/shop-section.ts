import type { Bottleneck } from '../../insight/insight-types.ts';
import type { OutputGroup } from '../../model/outputs/output-field.ts';
import { OUTPUTS } from '../../model/outputs.ts';
import type { ScenarioResult } from '../../model/scenario-result.ts';
import type { Scenario } from '../../plan/plan-types.ts';
import { countOf, formatPercent } from '../format-number.ts';
import { quantityText, quantityWithUnit, unitText } from '../format-quantity.ts';
import { reliefView } from '../relief-view.ts';
import { weekView } from '../week-view.ts';
import { outputText, plain, tableBlock, words } from './document-text.ts';
import type { DocumentBlock, DocumentSection, LenderSources } from './document-types.ts';
import { forLender } from './for-lender.ts';

function shopLead({ plan, today, shown }: LenderSources): string {
  const { site } = plan;
  const text = (id: string) => outputText(id, today, shown);
  return `${site.shopName} in ${site.place} dries food in ${countOf(today.chambers, 'chamber')} on ${countOf(today.pumps, 'vacuum pump')}. An average week brings ${text('batches')} batches and ${text('dryOut')} of dried product, with ${text('handsOn')} of work at the chambers; it leaves ${text('contribution')} after running cost.`;
}

/** What a shared pump does to a shop, for a reader who has none. */
function jamWords({ sharedPumpJams, lastChamberAdds }: Bottleneck): string {
  if (!sharedPumpJams || lastChamberAdds === null) return '';
  return ` That is: chambers that share a pump slow each other down, and the last of them brings ${formatPercent(Math.max(0, lastChamberAdds))} of what it would bring with a pump of its own. All figures of these papers have this in them.`;
}

function limitBlocks(
  { plan, shown }: LenderSources,
  scenario: Scenario,
  bottleneck: Bottleneck | null,
): readonly DocumentBlock[] {
  if (!bottleneck) return [words('What limits this set-up has not been looked for.')];
  const view = reliefView(bottleneck, plan, scenario, shown);
  return [
    words(`${view.finding}.${jamWords(bottleneck)}`),
    tableBlock({
      caption: `${view.table.caption}, each line a fresh run of the week`,
      head: view.table.head,
      rows: view.table.rows.map((cells) => plain(...cells.map(forLender))),
      figuresFrom: 1,
      wordsIn: [3],
      widths: [14, 9, 17, 44, 16],
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

function comparedTable(sources: LenderSources, caption: string, group: OutputGroup): DocumentBlock {
  const { today, result, shown } = sources;
  const rows = OUTPUTS.filter((output) => output.group === group).map((output) => {
    const text = (of: ScenarioResult) => quantityText(output.read(of), output.dimension, shown);
    const now = isToday(sources) ? [] : [text(today)];
    return plain(output.label, unitText(output.dimension, shown), ...now, text(result));
  });
  const head = ['', 'Unit', ...(isToday(sources) ? [] : ['Today']), result.name];
  return tableBlock({ caption, head, rows, figuresFrom: 2 });
}

function isToday({ plan, scenario }: LenderSources): boolean {
  return plan.scenarios[0]?.id === scenario.id;
}

/** Who does the work, and at what pay. */
function handsWords({ result, today, shown }: LenderSources): string {
  const { paidTime, loadedWage } = result.account.labour;
  const hours = (time: number) => quantityWithUnit(time, 'time', shown);
  const pay = quantityWithUnit(loadedWage, 'moneyPerTime', shown);
  return `Hired hands are paid for ${hours(paidTime)} a week at ${pay}, charges among it, where it is ${hours(today.account.labour.paidTime)} today.`;
}

function expansionLead(sources: LenderSources): string {
  const { result, today, scenario, shown } = sources;
  if (isToday(sources)) return 'This plan goes on with the shop as it is.';
  const note = scenario.note.trim() === '' ? '' : `The owner notes: “${scenario.note.trim()}”`;
  const change = `${result.name} runs ${countOf(result.chambers, 'chamber')} on ${countOf(result.pumps, 'vacuum pump')}, where there are ${countOf(today.chambers, 'chamber')} on ${countOf(today.pumps, 'vacuum pump')} today.`;
  const rise = `The week brings ${outputText('dryOut', result, shown)} of dried product instead of ${outputText('dryOut', today, shown)}.`;
  return [change, rise, handsWords(sources), note].filter((text) => text !== '').join(' ');
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
      comparedTable(sources, 'An average week, simulated: what is made', 'throughput'),
      comparedTable(sources, 'An average week, simulated: vacuum and power', 'vacuum'),
      { kind: 'heading', text: `A typical week: ${week.finding}` },
      { kind: 'figure', figure: 'week' },
      { kind: 'heading', text: 'What limits it then' },
      ...limitBlocks(sources, scenario, sources.bottleneck),
    ],
  };
}
