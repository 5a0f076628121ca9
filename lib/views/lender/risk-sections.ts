import { baseValues } from '../../inputs/base-values.ts';
import type { BreakEvenPoint } from '../../model/scenario-result.ts';
import { formatFixed, formatPercent, formatSensible, NONE } from '../format-number.ts';
import { quantityText, quantityWithUnit, unitText } from '../format-quantity.ts';
import { stressView } from '../stress-view.ts';
import { fromDataTable, moneyText, outputOf, outputText, plain, tableBlock, words } from './document-text.ts';
import type { DocumentSection, LenderSources } from './document-types.ts';
import { forLender } from './for-lender.ts';

function pointRow(label: string, point: BreakEvenPoint, { shown }: LenderSources) {
  return plain(
    label,
    quantityText(point.perWeek, 'massPerWeek', shown),
    moneyText(point.salesPerWeek, shown),
    point.marginOfSafety === null ? NONE : formatPercent(point.marginOfSafety),
  );
}

function breakEvenLead({ result, shown }: LenderSources): string {
  const { withLoans } = result.breakEven;
  const sales = moneyText(result.cost.salesPerWeek, shown);
  if (withLoans.marginOfSafety === null) return 'There is no volume at which this shop would cover its costs.';
  const room = formatPercent(Math.abs(withLoans.marginOfSafety));
  const verdict =
    withLoans.marginOfSafety >= 0
      ? `The shop may sell ${room} less by weight, running cost falling with it, before costs and loan payments of the dearest year are no longer covered.`
      : `The shop would have to sell ${room} more by weight, running cost rising with it, to cover costs and loan payments of the dearest year.`;
  return `A normal week sells for ${sales}. ${verdict} A fall of prices at full cost bites sooner: it is among the stress cases.`;
}

/** How much has to be sold. */
export function breakEvenSection(sources: LenderSources): DocumentSection {
  const { result, shown } = sources;
  const { operating, withLoans, fixedPerWeek } = result.breakEven;
  return {
    id: 'break-even',
    title: 'Break-even and margin of safety',
    blocks: [
      words(breakEvenLead(sources)),
      tableBlock({
        caption: `At the present mix of products; standing cost is ${moneyText(fixedPerWeek, shown)} a week`,
        head: ['', `To be sold [${unitText('massPerWeek', shown)}]`, 'Sales a week', 'Margin of safety'],
        rows: [
          pointRow('Running and standing cost covered', operating, sources),
          pointRow('Loan payments covered too', withLoans, sources),
        ],
        figuresFrom: 1,
      }),
    ],
  };
}

/** What the customary stresses leave. */
export function stressSection({ risk, result, shown }: LenderSources): DocumentSection {
  const view = stressView(risk, result.finance.line, shown);
  return {
    id: 'stress',
    title: 'Stress cases and reverse stress',
    blocks: [
      words(`${view.finding}. ${view.summary}`),
      { kind: 'figure', figure: 'stress' },
      fromDataTable(view.table),
      words(
        'Stresses are those that lenders customarily ask of small borrowers. Sales fall by price, at full volume and full cost, which is harder than selling less; late machines are paid for as planned; a lost customer is not made up by others.',
      ),
    ],
  };
}

/** How often something happens, in words. @param perYear mean number of times */
function oftenWords(perYear: number): string {
  if (perYear <= 0) return 'No failure is expected.';
  if (perYear >= 1) return `A failure is expected ${formatSensible(perYear)} times a year.`;
  return `A failure is expected once in ${formatSensible(1 / perYear)} years.`;
}

function pumpRisk({ risk, result, shown }: LenderSources): string {
  const { expected, spread } = risk.failures;
  const money = (value: number) => moneyText(value, shown);
  const stop =
    result.pumps === 1
      ? 'One pump carries all chambers, so one failure stops them all'
      : 'Each pump that fails stops the chambers on it';
  return `${stop}. ${oftenWords(expected.failures)} In a mean year pumps stand still for ${quantityWithUnit(expected.downtime, 'time', shown)} and cost ${formatSensible(expected.lostBatches)} batches and ${money(expected.cost.total)}; one year in twenty costs ${money(spread.worstInTwenty)} or more. The mean year is counted in every projection.`;
}

function spareWords({ risk, scenario, shown }: LenderSources): string {
  const { price, savedPerYear, payback } = risk.spare;
  const has = scenario.sparePump === 'onShelf' ? 'A spare stands on the shelf.' : 'There is no spare on the shelf.';
  const pays = payback === null ? 'would not pay for itself' : `pays for itself in ${formatSensible(payback)} years`;
  return `${has} One for ${moneyText(price, shown)} saves ${moneyText(savedPerYear, shown)} a year and ${pays}. Oil is changed by hours or by water swallowed, whichever comes first.`;
}

function marketWords({ plan }: LenderSources): string {
  const { biggestCustomer } = baseValues('financing', plan.financing);
  return `No product sells more than its market takes, growth and season counted. Losing the biggest customer, ${formatPercent(biggestCustomer)} of sales, is among the stress cases.`;
}

/** What may go wrong and what is done about it. */
export function riskSection(sources: LenderSources): DocumentSection {
  const { result, shown } = sources;
  const items = [
    { about: 'A vacuum pump fails', words: `${pumpRisk(sources)} ${spareWords(sources)}` },
    { about: 'The market takes less', words: marketWords(sources) },
    {
      about: 'Capacity falls short',
      words: `Closures, small stoppages and months of ramp-up are taken off before anything is sold. Chambers are at work ${outputText('chamberUse', result, shown)} of their hours.`,
    },
    {
      about: 'Costs rise',
      words: `Costs ten per cent up are among the stress cases. Electricity is ${moneyText(result.cost.lines.find((line) => line.part === 'electricity')?.perBatch ?? 0, shown)} of the ${moneyText(result.cost.perBatch, shown)} that a batch costs.`,
    },
    {
      about: 'Money runs short',
      words: `The least in the bank at the end of any month is ${moneyText(result.finance.lowestCash, shown)}.`,
    },
  ];
  const warnings = result.warnings.map(({ problem, remedy }) => ({
    about: 'To be looked at',
    words: forLender(`${problem} ${remedy}`),
  }));
  return {
    id: 'risks',
    title: 'Risks and what is done about them',
    blocks: [{ kind: 'list', items: [...items, ...warnings] }],
  };
}

/** What the purchase brings against staying as today. */
export function returnSection(sources: LenderSources): DocumentSection {
  const { plan, result, shown } = sources;
  const { discountRate } = baseValues('financing', plan.financing);
  const found = result.finance.versusToday;
  const years = ((found?.incremental.length ?? 1) - 1) / 12;
  const ids = ['payback', 'payback.discounted', 'npv', 'npv.yearly', 'irr', 'mirr', 'profitability', 'cashNeeded'];
  const blocks = found
    ? [
        words(
          `With and without: the shop with the purchase less the shop as it is, month by month over ${formatFixed(years, Number.isInteger(years) ? 0 : 1)} years, after tax and before loans. The owner wants ${quantityWithUnit(discountRate, 'ratePerYear', shown)} on money laid out; later money is counted for less by that. What is left at the end counts in the present value and the rates, not in the payback.`,
        ),
        { kind: 'figure', figure: 'payback' } as const,
        tableBlock({
          caption: 'Return against staying as today',
          head: ['Measure', 'Figure', 'What it says'],
          rows: [
            ...ids.map((id) =>
              plain(outputOf(id).label, outputText(id, result, shown), forLender(outputOf(id).meaning)),
            ),
            plain(
              'Net present value of own money',
              moneyText(found.financed.netPresentValue, shown),
              'The same for what the owner pays in and has left after loan payments.',
            ),
          ],
          figuresFrom: 1,
          wordsIn: [2],
          widths: [30, 16, 54],
        }),
      ]
    : [words('This is the shop as it is; there is nothing to compare it with.')];
  return { id: 'returns', title: 'Return on the money', blocks };
}
