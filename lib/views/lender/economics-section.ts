import type { ScenarioResult } from '../../model/scenario-result.ts';
import { batchCostView, COST_PART_LABELS, COST_PARTS } from '../batch-cost-view.ts';
import { shownValue, unitText } from '../format-quantity.ts';
import { exactMoneyText, moneyText, outputText, plain, tableBlock, total, words } from './document-text.ts';
import type { DocumentBlock, DocumentSection, LenderSources } from './document-types.ts';

function costTable({ today, result, shown }: LenderSources): DocumentBlock {
  const money = exactMoneyText;
  const perMass = (value: number | undefined) =>
    exactMoneyText(value === undefined ? value : shownValue(value, 'moneyPerMass', shown));
  const line = (of: ScenarioResult, part: string) => of.cost.lines.find((cost) => cost.part === part);
  const rows = COST_PARTS.map((part) =>
    plain(
      COST_PART_LABELS[part],
      money(line(today, part)?.perBatch),
      money(line(result, part)?.perBatch),
      perMass(line(today, part)?.perKilogram),
      perMass(line(result, part)?.perKilogram),
    ),
  );
  const [batch, mass] = [unitText('money', shown), unitText('moneyPerMass', shown)];
  return tableBlock({
    caption: `Running cost of an average batch [${batch}] and of a dried weight [${mass}]`,
    head: ['', 'Batch, today', 'Batch, planned', 'Weight, today', 'Weight, planned'],
    rows: [
      ...rows,
      total(
        'Running cost',
        money(today.cost.perBatch),
        money(result.cost.perBatch),
        perMass(today.cost.perKilogram),
        perMass(result.cost.perKilogram),
      ),
      total('Left over', money(today.cost.contributionPerBatch), money(result.cost.contributionPerBatch), '', ''),
    ],
    figuresFrom: 1,
  });
}

/** What a batch and a weight cost and leave. */
export function economicsSection(sources: LenderSources): DocumentSection {
  const { result, today, scenario, shown } = sources;
  const views = [
    { id: today.scenarioId, name: today.name, place: 0, result: today },
    ...(result.scenarioId === today.scenarioId ? [] : [{ id: scenario.id, name: scenario.name, place: 1, result }]),
  ];
  const view = batchCostView(views, scenario.id, shown);
  return {
    id: 'economics',
    title: 'Unit economics',
    blocks: [
      words(
        `${view.finding}. Sold, it leaves ${moneyText(result.cost.contributionPerBatch, shown)} after running cost, and all batches of a week ${outputText('contribution', result, shown)}; rent, interest and tax come after that. What each product leaves stands with its sales.`,
      ),
      costTable(sources),
      { kind: 'figure', figure: 'batchCost' },
    ],
  };
}
