import type { PumpUpkeepCost } from '../../cost/pump-upkeep.ts';
import type { GroupWeek } from '../../plant/report-types.ts';
import { pathOf } from './plan-paths.ts';
import { fixedTerm, inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import { pumpLabel, pumpTimeTerm, waterTerm } from './vacuum-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

const LITRES = fixedTerm(
  { label: 'Litres in a cubic metre', symbol: 'L', value: 1000, dimension: 'count' },
  'Oil is priced by the litre and measured in cubic metres.',
);

interface Pump {
  readonly context: WorkContext;
  readonly group: GroupWeek;
  readonly index: number;
  readonly upkeep: PumpUpkeepCost;
  readonly path: string;
}

function changesTerm({ context, group, index, upkeep, path }: Pump): Term {
  const { plan } = context;
  return workedTerm({ label: 'Oil changes a week', symbol: 'n', value: upkeep.oilChanges, dimension: 'count' }, () =>
    worked(
      'running time ÷ oil life in hours, or water ÷ oil life in water: whichever asks for more changes',
      'larger of t ÷ h and w ÷ m',
      [
        pumpTimeTerm(context, group, index, 't'),
        inputTerm(plan, `${path}.oilLifeHours`, 'h'),
        waterTerm(context, group, index, 'w'),
        inputTerm(plan, `${path}.oilLifeWater`, 'm'),
      ],
      ([t = 0, h = 1, w = 0, m = 1]) => Math.max(t / h, w / m),
    ),
  );
}

function oilWorking(pump: Pump): Working {
  const { plan } = pump.context;
  return worked(
    'oil changes a week × (oil of one change × price + filters of one change)',
    'n × (V × L × p + f)',
    [
      changesTerm(pump),
      inputTerm(plan, `${pump.path}.oilVolume`, 'V'),
      LITRES,
      inputTerm(plan, `${pump.path}.oilPrice`, 'p'),
      inputTerm(plan, `${pump.path}.filterCost`, 'f'),
    ],
    ([n = 0, V = 0, L = 0, p = 0, f = 0]) => n * (V * L * p + f),
  );
}

function rebuildWorking({ context, group, index, path }: Pump): Working {
  return worked(
    'running time a week ÷ hours between rebuilds × cost of a rebuild',
    't ÷ i × r',
    [
      pumpTimeTerm(context, group, index, 't'),
      inputTerm(context.plan, `${path}.rebuildInterval`, 'i'),
      inputTerm(context.plan, `${path}.rebuildCost`, 'r'),
    ],
    ([t = 0, i = 1, r = 0]) => (t / i) * r,
  );
}

function pumpWorking(pump: Pump): Working {
  const { upkeep, context, path } = pump;
  const hasOil = inputTerm(context.plan, `${path}.oilVolume`, 'V').value > 0;
  const rebuilds = workedTerm(
    { label: 'Rebuilds a week', symbol: 'r', value: upkeep.rebuilds, dimension: 'money' },
    () => rebuildWorking(pump),
  );
  const oil = workedTerm(
    { label: 'Oil and filters a week', symbol: 'o', value: upkeep.oil + upkeep.filters, dimension: 'money' },
    () => oilWorking(pump),
  );
  return sumWorking(
    hasOil ? 'oil and filters + rebuilds laid by for' : 'rebuilds laid by for; the pump runs without oil',
    hasOil ? [oil, rebuilds] : [rebuilds],
  );
}

/** Oil, filters and rebuilds of all pumps in a week. */
export function upkeepTerm(context: WorkContext, symbol: string): Term {
  const { plant, account } = context.result;
  const pumps = plant.groups.map((group, index) => {
    const upkeep = account.upkeep[index];
    if (!upkeep) throw new RangeError(`no upkeep of pump ${index}`);
    const pump = { context, group, index, upkeep, path: pathOf(context.plan, 'pumps', group.pumpTypeId) };
    const label = `Upkeep of ${pumpLabel(context, index)}`;
    return workedTerm({ label, symbol: numbered('u', index + 1), value: upkeep.total, dimension: 'money' }, () =>
      pumpWorking(pump),
    );
  });
  return workedTerm(
    { label: 'Oil and vacuum upkeep a week', symbol, value: account.week.running.upkeep, dimension: 'money' },
    () => sumWorking('upkeep of each pump, added up', pumps),
  );
}
