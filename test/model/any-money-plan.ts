import type { InputField } from '../../lib/inputs/input-field.ts';
import { fieldsOf, keyOf, type Section } from '../../lib/inputs/register.ts';
import { seededRandom } from '../../lib/numeric/seeded-random.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Loan, Plan } from '../../lib/plan/plan-types.ts';

/** Physics has nothing to do with money, and most random foods and traps are none: of these sections only such groups are moved. */
const GROUPS: Readonly<Partial<Record<Section, readonly string[]>>> = {
  product: ['Money', 'Demand', 'Season'],
  chamber: ['Money', 'Electricity'],
  pump: ['Money', 'Electricity', 'Upkeep', 'Reliability'],
};

type Values = Readonly<Record<string, unknown>>;

function within(field: Extract<InputField, { kind: 'quantity' | 'number' }>, dice: () => number): number {
  const place = dice();
  if (place < 0.15) return field.min;
  if (place > 0.85) return field.max;
  const value = field.min + ((place - 0.15) / 0.7) ** 3 * (field.max - field.min);
  return field.integer ? Math.round(value) : value;
}

function movedValue(field: InputField, current: unknown, dice: () => number): unknown {
  switch (field.kind) {
    case 'quantity':
      if (current === null) return null;
      return { value: within(field, dice), unit: field.unit, origin: 'guess' };
    case 'number':
      return within(field, dice);
    case 'flag':
      return dice() < 0.5;
    case 'choice':
      return field.options[Math.floor(dice() * field.options.length)]?.value ?? current;
  }
}

/** A section with about half of its entries moved. */
function moved<Item extends object>(section: Section, item: Item, dice: () => number): Item {
  const changed: Record<string, unknown> = { ...(item as Values) };
  for (const field of fieldsOf(section)) {
    const key = keyOf(field);
    const isMoney = GROUPS[section]?.includes(field.group) ?? true;
    if (!isMoney || dice() < 0.5) continue;
    changed[key] = movedValue(field, changed[key], dice);
  }
  return changed as Item;
}

/** A loan with months left to repay in, and no more than a third of each purchase. */
function anyLoan(id: string, dice: () => number): Loan {
  const loan = moved('loan', DEMO_PLAN.financing.loans[0] as Loan, dice);
  const months = (value: number) => ({ value: Math.round(value), unit: 'month', origin: 'guess' }) as const;
  const free = Math.round(loan.graceMonths.value) + Math.round(loan.interestOnlyMonths.value);
  return {
    ...loan,
    id,
    share: { ...loan.share, value: loan.share.value / 3 },
    term: months(Math.min(360, Math.max(loan.term.value, free + 1))),
  };
}

/** A plan with about half of its entries moved anywhere within their ranges, ends included; it may break rules that span several. */
export function anyPlan(seed: number): Plan {
  const dice = seededRandom(seed).uniform;
  const [today, first, second] = DEMO_PLAN.scenarios.slice(0, 3) as [
    Plan['scenarios'][number],
    Plan['scenarios'][number],
    Plan['scenarios'][number],
  ];
  const early = { ...moved('scenario', first, dice), groupSize: 1 + Math.floor(3 * dice()) };
  const late = { ...moved('scenario', second, dice), after: dice() < 0.5 ? early.id : null };
  return {
    ...DEMO_PLAN,
    batchLog: [],
    site: { ...moved('site', DEMO_PLAN.site, dice), priceBands: dice() < 0.5 ? [] : DEMO_PLAN.site.priceBands },
    crew: moved('crew', DEMO_PLAN.crew, dice),
    freezer: DEMO_PLAN.freezer && dice() < 0.8 ? moved('freezer', DEMO_PLAN.freezer, dice) : null,
    financing: {
      ...moved('financing', DEMO_PLAN.financing, dice),
      loans: ['a', 'b', 'c'].slice(Math.floor(4 * dice())).map((id) => anyLoan(id, dice)),
    },
    products: DEMO_PLAN.products.map((product) => moved('product', product, dice)),
    chambers: DEMO_PLAN.chambers.map((chamber) => moved('chamber', chamber, dice)),
    pumps: DEMO_PLAN.pumps.map((pump) => moved('pump', pump, dice)),
    hoses: DEMO_PLAN.hoses.map((hose) => moved('hose', hose, dice)),
    scenarios: [today, { ...early, roughingPump: 'small' }, { ...late, roughingPump: 'small' }],
  } as Plan;
}
