import type { VolumeMonth } from '../../cost/monthly-volumes.ts';
import { baseValues } from '../../inputs/base-values.ts';
import type { ProductTrade } from '../../model/monthly-trade.ts';
import { findById } from '../../plan/find-by-id.ts';
import { formatPercent } from '../format-number.ts';
import { quantityText, shownValue, unitText } from '../format-quantity.ts';
import { exactMoneyText, moneyText, plain, tableBlock, total, wholeText, words } from './document-text.ts';
import type { DocumentBlock, DocumentRow, DocumentSection, LenderSources } from './document-types.ts';
import { abreast, sumOfYear, type YearSpan, yearName, yearsOf } from './plan-years.ts';

function sumOf(volumes: readonly VolumeMonth[], key: 'capacity' | 'sold' | 'demand', year: YearSpan): number | null {
  const series = volumes.map((month) => month[key]);
  if (series.some((value) => value === null)) return null;
  return sumOfYear(
    series.map((value) => value ?? 0),
    year,
  );
}

function shareSold(volumes: readonly VolumeMonth[], year: YearSpan): string {
  const wanted = sumOf(volumes, 'demand', year);
  return wanted === null || wanted <= 0 ? '–' : formatPercent((sumOf(volumes, 'sold', year) ?? 0) / wanted);
}

function volumeRows({ plan, shown }: LenderSources, trade: ProductTrade, years: readonly YearSpan[]): DocumentRow[] {
  const { productId, volumes } = trade;
  const { name } = findById(plan.products, productId, 'product');
  const line = (label: string, key: 'capacity' | 'sold' | 'demand') =>
    plain(
      label,
      ...years.map((year) => {
        const mass = sumOf(volumes, key, year);
        return mass === null ? 'no limit' : quantityText(mass, 'mass', shown);
      }),
    );
  return [
    line(`${name}: the market takes`, 'demand'),
    line(`${name}: could be made`, 'capacity'),
    line(`${name}: sold`, 'sold'),
    plain(`${name}: sold, share of its market`, ...years.map((year) => shareSold(volumes, year))),
  ];
}

function volumeTable(sources: LenderSources, years: readonly YearSpan[]): DocumentBlock {
  return tableBlock({
    caption: `Volumes by year, closures, stoppages, failing pumps and ramp-up taken off [${unitText('mass', sources.shown)}]`,
    head: ['', ...years.map(yearName)],
    rows: sources.result.trade.products.flatMap((trade) => volumeRows(sources, trade, years)),
    figuresFrom: 1,
    isWide: true,
  });
}

function salesRow(sources: LenderSources, { productId, volumes }: ProductTrade, years: readonly YearSpan[]) {
  const { plan, result, shown } = sources;
  const product = findById(plan.products, productId, 'product');
  const { price } = baseValues('product', product);
  const week = result.account.week.products.find((candidate) => candidate.productId === productId);
  const perMass = (value: number | null | undefined) =>
    exactMoneyText(typeof value === 'number' ? shownValue(value, 'moneyPerMass', shown) : value);
  const sales = years.map((year) => wholeText(100 * price * (sumOf(volumes, 'sold', year) ?? 0)));
  const { cost, contribution } = week ?? {};
  return plain(
    product.name,
    perMass(price),
    perMass(cost?.perSaleableKilogram),
    perMass(contribution?.perSaleableKilogram),
    ...sales,
  );
}

function salesTable(sources: LenderSources, years: readonly YearSpan[]): DocumentBlock {
  const { result, shown } = sources;
  const { revenue } = result.finance.statements.income;
  const all = years.map((year) => wholeText(sumOfYear(revenue, year)));
  return tableBlock({
    caption: `By product: price, running cost and what is left [${unitText('moneyPerMass', shown)}], and sales [${shown.currency}]`,
    head: ['', 'Price', 'Running cost', 'Left over', ...years.map(yearName)],
    rows: [
      ...result.trade.products.map((trade) => salesRow(sources, trade, years)),
      total('Sales', '', '', '', ...all),
    ],
    figuresFrom: 1,
    isWide: true,
  });
}

/** Sales of the first year that is run in the new way from its first month on, against the shop as it is. */
function lead({ result, today, shown }: LenderSources): string {
  const limit =
    'Each month sells the smaller of what can be made and what the market takes. How much a market takes and how it grows is what the owner puts in: the origin stands with the assumptions.';
  const year: YearSpan = [12, 24];
  const { revenue } = result.finance.statements.income;
  if (result.scenarioId === today.scenarioId || revenue.length < year[1]) return limit;
  const sales = (of: typeof result) => moneyText(sumOfYear(of.finance.statements.income.revenue, year) / 100, shown);
  return `In the second year the shop sells for ${sales(result)}; as it is today it would sell for ${sales(today)}. ${limit}`;
}

/** What the markets take, what can be made, and what is sold, year by year. */
export function salesSection(sources: LenderSources): DocumentSection {
  const spans = abreast(yearsOf(sources.result.trade.fixedCosts.length));
  return {
    id: 'sales',
    title: 'Markets and sales',
    blocks: [
      words(lead(sources)),
      ...spans.map((years) => volumeTable(sources, years)),
      ...spans.map((years) => salesTable(sources, years)),
    ],
  };
}
