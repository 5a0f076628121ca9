import { findById } from '../../plan/find-by-id.ts';
import type { DryingLimit, GroupWeek } from '../../plant/report-types.ts';
import { chamberInputs, DRYING_LAWS, dryingInputs, pumpInputs, VACUUM_LAWS } from './counted-inputs.ts';
import { LIMIT_WORDS, SUBLIMATION_LIMITS } from './limit-words.ts';
import { chamberTypeByNumber, chamberTypesOf, pathOf, pathsIn } from './plan-paths.ts';
import {
  addUp,
  countedTerm,
  inputTerm,
  mostWorking,
  numbered,
  summed,
  sumWorking,
  worked,
  workedTerm,
} from './terms.ts';
import type { Term, WorkContext, Working } from './working.ts';

/** What a pump is called where there may be several. */
export function pumpLabel({ result }: WorkContext, index: number): string {
  return result.plant.groups.length === 1 ? 'the pump' : `pump ${index + 1}`;
}

function eachPump(context: WorkContext, term: (group: GroupWeek, index: number) => Term): Term[] {
  return context.result.plant.groups.map(term);
}

/** Running time of one pump in a week. */
export function pumpTimeTerm(context: WorkContext, group: GroupWeek, index: number, symbol: string): Term {
  return countedTerm(
    { label: `Running time of ${pumpLabel(context, index)}`, symbol, value: group.pumpTime, dimension: 'timePerWeek' },
    {
      what: `Time in which any of its ${group.chambers} chambers needs vacuum, from pump-down until it is let in air, in the measured weeks, divided by their number.`,
      sources: DRYING_LAWS,
      inputs: dryingInputs(context),
    },
  );
}

/** Water that one pump swallows in a week. */
export function waterTerm(context: WorkContext, group: GroupWeek, index: number, symbol: string): Term {
  return countedTerm(
    {
      label: `Water through ${pumpLabel(context, index)}`,
      symbol,
      value: group.waterSwallowed,
      dimension: 'massPerWeek',
    },
    {
      what: 'Vapour that slips past the traps, step by step of the simulation: pump throughput × vapour share × molar mass ÷ (gas constant × gas temperature), added up over the measured weeks and divided by their number.',
      sources: VACUUM_LAWS,
      inputs: [
        ...pumpInputs(context),
        ...chamberInputs(context, ['leak', 'trapNoLoadTemperature', 'trapRatedTemperature', 'trapVapourConductance']),
      ],
    },
  );
}

function loadTerm(context: WorkContext, group: GroupWeek, index: number, symbol: string): Term {
  return workedTerm(
    {
      label: `Vapour load of ${pumpLabel(context, index)}`,
      symbol,
      value: group.vapourLoadMean,
      dimension: 'massFlow',
    },
    () =>
      worked(
        'water it swallows in a week ÷ its running time in a week',
        'w ÷ t',
        [waterTerm(context, group, index, 'w'), pumpTimeTerm(context, group, index, 't')],
        ([w = 0, t = 0]) => (t > 0 ? w / t : 0),
      ),
  );
}

export function vapourMeanWorking(context: WorkContext): Working {
  const terms = eachPump(context, (group, k) => loadTerm(context, group, k, numbered('v', k + 1)));
  return mostWorking('largest of the pumps’ mean vapour loads', terms);
}

export function vapourPeakWorking(context: WorkContext): Working {
  const terms = eachPump(context, (group, k) =>
    countedTerm(
      {
        label: `Highest vapour load of ${pumpLabel(context, k)}`,
        symbol: numbered('v', k + 1),
        value: group.vapourLoadPeak,
        dimension: 'massFlow',
      },
      {
        what: 'Highest vapour load of any step of the simulation in the measured weeks.',
        sources: VACUUM_LAWS,
        inputs: pumpInputs(context),
      },
    ),
  );
  return mostWorking('largest of the pumps’ highest vapour loads', terms);
}

export function toleranceUseWorking(context: WorkContext): Working {
  const { plan, result } = context;
  const shares = result.plant.groups.flatMap((group, k) => {
    if (group.vapourTolerance <= 0) return [];
    const tolerance = `${pathOf(plan, 'pumps', group.pumpTypeId)}.vapourTolerance`;
    return workedTerm(
      {
        label: `Share of what ${pumpLabel(context, k)} can swallow`,
        symbol: numbered('s', k + 1),
        value: group.vapourLoadMean / group.vapourTolerance,
        dimension: 'fraction',
      },
      () =>
        worked(
          'mean vapour load ÷ vapour it can swallow',
          'v ÷ q',
          [loadTerm(context, group, k, 'v'), inputTerm(plan, tolerance, 'q')],
          ([v = 0, q = 1]) => v / q,
        ),
    );
  });
  return mostWorking('largest of the pumps’ shares', shares);
}

export function pressureWorking(context: WorkContext): Working {
  const terms = eachPump(context, (group, k) =>
    countedTerm(
      {
        label: `Inlet pressure of ${pumpLabel(context, k)} (95 %)`,
        symbol: numbered('p', k + 1),
        value: group.manifoldPressure95,
        dimension: 'pressure',
      },
      {
        what: 'Every step of the simulation gives the pressure at which the pump takes what the hoses bring. Steps sorted by pressure, weighed by their length: this one is not exceeded 95 % of the time.',
        sources: VACUUM_LAWS,
        inputs: [...pumpInputs(context), ...chamberInputs(context, ['leak', 'outgassing'])],
      },
    ),
  );
  return mostWorking('largest of the pumps’ inlet pressures', terms);
}

/** Pressure and drying time of one product's batches that had ice to dry off. */
function pressureTerms(context: WorkContext, productId: string, index: number): Term[] {
  const name = findById(context.plan.products, productId, 'product').name;
  const own = context.result.plant.batchRecords.filter(
    (batch) => batch.productId === productId && batch.pressureMean > 0,
  );
  const time = addUp(own.map((batch) => batch.phases.primary ?? 0));
  if (time === 0) return [];
  const pressure = addUp(own.map((batch) => batch.pressureMean * (batch.phases.primary ?? 0))) / time;
  return [
    countedTerm(
      { label: `Chamber pressure: ${name}`, symbol: numbered('p', index), value: pressure, dimension: 'pressure' },
      {
        what: `Chamber pressure of every step of the simulation while ice is drying off, weighed by the length of the step, over ${own.length} batches.`,
        sources: [...VACUUM_LAWS, ...DRYING_LAWS],
        inputs: dryingInputs(context),
      },
    ),
    countedTerm(
      { label: `Time drying the ice off: ${name}`, symbol: numbered('t', index), value: time, dimension: 'time' },
      { what: `Added up over ${own.length} batches that ended in the measured weeks.`, sources: DRYING_LAWS },
    ),
  ];
}

/** Mean chamber pressure, product by product and weighed by drying time. */
export function chamberPressureWorking(context: WorkContext): Working {
  const terms = context.result.plant.products.flatMap((week, k) => pressureTerms(context, week.productId, k + 1));
  return worked('pressure × time of each product, added up ÷ time of all', 'Σ(p × t) ÷ Σt', terms, (values) => {
    const times = values.filter((_, k) => k % 2 === 1);
    const weighed = times.map((time, k) => time * (values[2 * k] ?? 0));
    return times.length > 0 ? addUp(weighed) / addUp(times) : 0;
  });
}

/** Hours of drying held back by one limit. */
function limitTerm(context: WorkContext, limit: DryingLimit, symbol: string): Term {
  return countedTerm(
    { label: LIMIT_WORDS[limit], symbol, value: context.result.plant.limits[limit], dimension: 'timePerWeek' },
    {
      what: `Time of all chambers together in which this held the drying back, in the measured weeks, divided by their number: ${LIMIT_WORDS[limit]}.`,
      sources: DRYING_LAWS,
      inputs: dryingInputs(context),
    },
  );
}

/** Share of ice-drying time under some limits. */
export function limitShareWorking(context: WorkContext, limits: readonly DryingLimit[], formula: string): Working {
  const terms = SUBLIMATION_LIMITS.map((limit, k) => limitTerm(context, limit, numbered('t', k + 1)));
  const places = limits.map((limit) => SUBLIMATION_LIMITS.indexOf(limit));
  const top = places.map((place) => terms[place]?.symbol).join(' + ');
  return worked(formula, `(${top}) ÷ (${summed(terms)})`, terms, (values) => {
    const all = addUp(values);
    return all > 0 ? addUp(places.map((place) => values[place] ?? 0)) / all : 0;
  });
}

/** Fullest trap: ice of the fullest batch of each chamber type over its capacity. */
export function trapFillWorking(context: WorkContext): Working {
  const { plan, scenario, result } = context;
  const typeOf = chamberTypeByNumber(scenario);
  const fills = chamberTypesOf(scenario).map((type, k) => {
    const own = result.plant.batchRecords.filter((batch) => typeOf[batch.chamber] === type);
    const ice = own.reduce((most, batch) => Math.max(most, batch.iceOnTrap), 0);
    const path = pathOf(plan, 'chambers', type);
    const capacity = inputTerm(plan, `${path}.trapCapacity`, 'c');
    const counted = countedTerm(
      { label: 'Most ice of a batch', symbol: 'm', value: ice, dimension: 'mass' },
      {
        what: `Ice on the trap at the end of the batch that left most of it, among ${own.length} that ended in the measured weeks.`,
        sources: DRYING_LAWS,
        inputs: pathsIn(path, ['shelfArea', 'trapArea']),
      },
    );
    return workedTerm(
      { label: capacity.label, symbol: numbered('f', k + 1), value: ice / capacity.value, dimension: 'fraction' },
      () =>
        worked('most ice of a batch ÷ what the trap can hold', 'm ÷ c', [counted, capacity], ([m = 0, c = 1]) => m / c),
    );
  });
  return mostWorking('largest of the chamber types’ fills', fills);
}

export function pumpHoursWorking(context: WorkContext): Working {
  const terms = eachPump(context, (group, k) => pumpTimeTerm(context, group, k, numbered('t', k + 1)));
  return sumWorking('running time of each pump, added up', terms);
}

/** Highest quarter-hour of all that draws current. */
export function peakPowerTerm(context: WorkContext, symbol: string): Term {
  const { plan, scenario, result } = context;
  const pump = pathOf(plan, 'pumps', scenario.pump);
  return countedTerm(
    { label: 'Highest quarter of an hour', symbol, value: result.plant.peakPower, dimension: 'power' },
    {
      what: 'Heaters, refrigeration, pumps, freezer, defrost and controls, added up quarter hour by quarter hour over the measured weeks: the highest of their means.',
      inputs: [
        ...chamberInputs(context, ['heaterPower', 'compressorPower', 'defrostPower', 'controlsPower']),
        `${pump}.power`,
        ...(plan.freezer ? ['freezer.power'] : []),
      ],
    },
  );
}

export function peakPowerWorking(context: WorkContext): Working {
  return sumWorking('highest quarter-hour mean of the measured weeks', [peakPowerTerm(context, 'P')]);
}
