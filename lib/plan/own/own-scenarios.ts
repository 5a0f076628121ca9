import { defaultValues } from '../../inputs/default-values.ts';
import { LIMITS } from '../limits.ts';
import type { Product, Scenario } from '../plan-types.ts';
import type { OwnAnswers } from './own-answers.ts';

/** Even shares that sum to 100 % to the last digit. */
function evenMix(products: readonly Product[]): Scenario['mix'] {
  const share = Math.floor(1000 / products.length) / 10;
  const last = Number((100 - share * (products.length - 1)).toFixed(1));
  return products.map(({ id }, place) => ({ product: id, share: place === products.length - 1 ? last : share }));
}

/** The shop as it is, and two steps that many think of next: one chamber more, and twice as many on one larger pump, with two shifts. */
export function ownScenarios(
  { pump, hours }: OwnAnswers,
  chambers: number,
  products: readonly Product[],
): readonly Scenario[] {
  const today: Scenario = {
    ...defaultValues('scenario'),
    id: 'today',
    name: 'Today',
    note: '',
    notes: {},
    after: null,
    chambers: [{ chamber: 'chamber', count: chambers }],
    pumpArrangement: pump,
    pump: 'pump',
    roughingPump: null,
    hose: 'hose',
    mix: evenMix(products),
    pattern: hours,
  };
  const larger = (id: string, name: string, count: number, change: Partial<Scenario>): Scenario[] =>
    count > LIMITS.chambersInScenario
      ? []
      : [{ ...today, id, name, chambers: [{ chamber: 'chamber', count }], purchaseMonth: 2, ...change }];
  return [
    today,
    ...larger('one-more', 'One chamber more', chambers + 1, {}),
    ...larger('twice', 'Twice, one pump, two shifts', chambers * 2, {
      pumpArrangement: 'shared',
      pump: 'larger-pump',
      pattern: 'two-shifts',
    }),
  ];
}
