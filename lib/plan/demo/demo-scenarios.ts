import { defaultValues } from '../../inputs/default-values.ts';
import type { Scenario } from '../plan-types.ts';

const USUAL_MIX = [
  { product: 'strawberries', share: 35 },
  { product: 'sweetcorn', share: 20 },
  { product: 'bean-soup', share: 20 },
  { product: 'puffed-candy', share: 25 },
];

const CANDY_MIX = [
  { product: 'strawberries', share: 15 },
  { product: 'sweetcorn', share: 10 },
  { product: 'bean-soup', share: 10 },
  { product: 'puffed-candy', share: 65 },
];

const today: Scenario = {
  ...defaultValues('scenario'),
  id: 'today',
  name: 'Today',
  note: 'Two chambers, each with the small pump it came with.',
  notes: {},
  after: null,
  chambers: [{ chamber: 'mid', count: 2 }],
  pumpArrangement: 'own',
  pump: 'small',
  roughingPump: null,
  hose: 'thin',
  mix: USUAL_MIX,
  pattern: 'days',
};

/** An expansion: chambers on one good pump, bought in the third month, with two shifts. */
function onGoodPump(id: string, name: string, count: number, note: string): Scenario {
  return {
    ...today,
    id,
    name,
    note,
    chambers: [{ chamber: 'mid', count }],
    pumpArrangement: 'shared',
    pump: 'good',
    hose: 'wide',
    pattern: 'two-shifts',
    purchaseMonth: 2,
  };
}

/** Six scenarios that tell one story: more chambers on one pump help, then stop helping, and the mix matters too. */
export const DEMO_SCENARIOS: readonly Scenario[] = [
  today,
  onGoodPump('three-shared', 'Three on one pump', 3, 'One chamber more, and one good pump for all.'),
  onGoodPump('four-shared', 'Four on one pump', 4, 'Two chambers more on the same pump.'),
  onGoodPump('six-shared', 'Six on one pump', 6, 'Is the pump still enough?'),
  {
    ...onGoodPump('six-groups', 'Six on two pumps', 6, 'The same six, three to a pump.'),
    pumpArrangement: 'groups',
    groupSize: 3,
  },
  {
    ...onGoodPump('four-candy', 'Four, mostly candy', 4, 'Candy dries in hours; will the market take it all?'),
    mix: CANDY_MIX,
  },
];
