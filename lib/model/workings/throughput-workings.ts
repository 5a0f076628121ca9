import { findById } from '../../plan/find-by-id.ts';
import { WEEK } from '../../plant/crew.ts';
import type { Phase, ProductWeek } from '../../plant/report-types.ts';
import { chamberInputs, crewInputs, DRYING_LAWS, dryingInputs, FREEZING_LAWS } from './counted-inputs.ts';
import { PHASE_WORDS, WAITS_FOR_PEOPLE, WORKING_PHASES } from './phase-words.ts';
import { chamberTypesOf, pathOf } from './plan-paths.ts';
import { addUp, countedTerm, fixedTerm, inputTerm, numbered, summed, sumWorking, worked, workedTerm } from './terms.ts';
import type { Term, WorkContext, Working } from './working.ts';

/** Name of a product of the plan. */
export function productName({ plan }: WorkContext, id: string): string {
  return findById(plan.products, id, 'product').name;
}

/** Loads of one product in a week. */
export function batchesTerm(context: WorkContext, week: ProductWeek, symbol: string): Term {
  const name = productName(context, week.productId);
  const ended = context.result.plant.batchRecords.filter((batch) => batch.productId === week.productId).length;
  return countedTerm(
    { label: `Batches a week: ${name}`, symbol, value: week.batches, dimension: 'count' },
    {
      what: `Loads of ${name}, each by the part of its time that falls into the measured weeks, divided by their number. ${ended} of them ended in those weeks.`,
      sources: DRYING_LAWS,
      inputs: dryingInputs(context),
    },
  );
}

/** Batches of an average week. */
export function batchesWorking(context: WorkContext): Working {
  const terms = context.result.plant.products.map((week, k) => batchesTerm(context, week, numbered('b', k + 1)));
  return sumWorking('batches of each product, added up', terms);
}

/** Wet food of one product: what one load weighs times the loads, where there is one size of chamber. */
export function wetTerm(context: WorkContext, week: ProductWeek, symbol: string): Term {
  const name = productName(context, week.productId);
  const named = { label: `Wet food: ${name}`, symbol, value: week.wetIn, dimension: 'massPerWeek' } as const;
  const load = `${pathOf(context.plan, 'products', week.productId)}.load`;
  const [type, ...others] = chamberTypesOf(context.scenario);
  if (type !== undefined && others.length === 0) {
    return workedTerm(named, () =>
      loadsWorking(context, week, load, `${pathOf(context.plan, 'chambers', type)}.shelfArea`),
    );
  }
  return countedTerm(named, {
    what: `Load per tray area × tray area of the chamber, added up over the loads of ${name} in chambers of more than one size.`,
    inputs: [load, ...chamberInputs(context, ['shelfArea'])],
  });
}

function loadsWorking(context: WorkContext, week: ProductWeek, load: string, area: string): Working {
  return worked(
    'batches a week × load per tray area × tray area of a chamber',
    'b × m × A',
    [batchesTerm(context, week, 'b'), inputTerm(context.plan, load, 'm'), inputTerm(context.plan, area, 'A')],
    ([b = 0, m = 0, A = 0]) => b * m * A,
  );
}

export function wetWorking(context: WorkContext): Working {
  const terms = context.result.plant.products.map((week, k) => wetTerm(context, week, numbered('w', k + 1)));
  return sumWorking('wet food of each product, added up', terms);
}

const PARTS = ['water', 'protein', 'fat', 'fibre', 'ash'] as const;

/** Share of the load that is water: as entered, or of the parts' sum where they come to more than the whole. */
function waterTerm(context: WorkContext, productId: string): Term {
  const path = pathOf(context.plan, 'products', productId);
  const parts = PARTS.map((part) => inputTerm(context.plan, `${path}.${part}`, part.slice(0, 3)));
  const water = inputTerm(context.plan, `${path}.water`, 'x');
  const whole = addUp(parts.map((part) => part.value));
  if (whole <= 1) return water;
  return workedTerm({ ...water, label: 'Share of water in the load', value: water.value / whole }, () =>
    worked('water ÷ all parts, which come to more than the whole', 'wat ÷ (sum of all)', parts, (values) => {
      const [first = 0] = values;
      return first / addUp(values);
    }),
  );
}

/** Dried product of one product in a week. */
export function dryTerm(context: WorkContext, week: ProductWeek, symbol: string): Term {
  const { plan } = context;
  const name = productName(context, week.productId);
  const path = pathOf(plan, 'products', week.productId);
  return workedTerm({ label: `Dried product: ${name}`, symbol, value: week.dryOut, dimension: 'massPerWeek' }, () =>
    worked(
      'wet food × share of dry matter × (1 + moisture left in it)',
      'w × (1 − x) × (1 + u)',
      [wetTerm(context, week, 'w'), waterTerm(context, week.productId), inputTerm(plan, `${path}.targetMoisture`, 'u')],
      ([w = 0, x = 0, u = 0]) => w * (1 - x) * (1 + u),
    ),
  );
}

export function dryWorking(context: WorkContext): Working {
  const terms = context.result.plant.products.map((week, k) => dryTerm(context, week, numbered('d', k + 1)));
  return sumWorking('dried product of each product, added up', terms);
}

/** What makes the hours of a phase: laws, or hands. */
function phaseInputs(context: WorkContext, phase: Phase): string[] {
  if (phase === 'primary' || phase === 'secondary' || phase === 'pumpDown') return dryingInputs(context);
  if (phase === 'freezing') return chamberInputs(context, ['freezingTemperature', 'freezingCoefficient']);
  if (phase === 'defrost') return chamberInputs(context, ['defrostTime']);
  if (phase === 'loading') return crewInputs(['loadPerBatch', 'loadPerKilogram']);
  if (phase === 'unloading') return crewInputs(['unloadPerBatch', 'unloadPerKilogram']);
  return phase === 'cleaning' ? crewInputs(['cleanPerBatch', 'cleanPerKilogram']) : [];
}

function phaseSources(phase: Phase) {
  if (phase === 'freezing') return FREEZING_LAWS;
  return phase === 'primary' || phase === 'secondary' ? DRYING_LAWS : [];
}

/** Hours that all chambers together spend in one phase in a week. */
export function phaseTerm(context: WorkContext, phase: Phase, symbol: string): Term {
  return countedTerm(
    { label: PHASE_WORDS[phase], symbol, value: context.result.plant.phases[phase], dimension: 'timePerWeek' },
    {
      what: `Time of all chambers together spent ${PHASE_WORDS[phase]} in the measured weeks, divided by their number.`,
      sources: phaseSources(phase),
      inputs: phaseInputs(context, phase),
    },
  );
}

/** The hours of an average batch, phase by phase. */
export function cycleWorking(context: WorkContext): Working {
  const batches = context.result.plant.batchRecords;
  const phases = (Object.keys(PHASE_WORDS) as Phase[]).filter((phase) => batches.some((batch) => batch.phases[phase]));
  const hours = phases.map((phase, k) =>
    countedTerm(
      {
        label: PHASE_WORDS[phase],
        symbol: numbered('t', k + 1),
        value: addUp(batches.map((batch) => batch.phases[phase] ?? 0)),
        dimension: 'time',
      },
      {
        what: `Time spent ${PHASE_WORDS[phase]}, added up over the ${batches.length} batches that ended in the measured weeks.`,
        sources: phaseSources(phase),
        inputs: phaseInputs(context, phase),
      },
    ),
  );
  const count = countedTerm(
    { label: 'Batches that ended', symbol: 'n', value: batches.length, dimension: 'count' },
    { what: 'Batches whose chamber was clean again within the measured weeks.' },
  );
  return worked(
    'time in each phase, added up over the batches that ended ÷ their number',
    `(${summed(hours)}) ÷ n`,
    [...hours, count],
    (values) => {
      const n = values.at(-1) ?? 0;
      return n > 0 ? addUp(values.slice(0, -1)) / n : 0;
    },
  );
}

const TASKS = { load: 'Loading', unload: 'Unloading', clean: 'Cleaning' } as const;

/** Hours of hands on work in a week. */
export function handsOnTerms({ result }: WorkContext): Term[] {
  return (Object.keys(TASKS) as (keyof typeof TASKS)[]).map((task, k) =>
    countedTerm(
      { label: TASKS[task], symbol: numbered('h', k + 1), value: result.plant.crew[task], dimension: 'timePerWeek' },
      {
        what: 'Minutes per batch and per kilogram, added up over the tasks done in the measured weeks, divided by their number.',
        inputs: crewInputs([`${task}PerBatch`, `${task}PerKilogram`]),
      },
    ),
  );
}

export function handsOnWorking(context: WorkContext): Working {
  return sumWorking('loading + unloading + cleaning', handsOnTerms(context));
}

/** Chambers of the scenario, added up over the types. */
export function chamberCountTerm({ plan, scenario, result }: WorkContext, symbol: string): Term {
  const path = pathOf(plan, 'scenarios', scenario.id);
  return workedTerm({ label: 'Chambers', symbol, value: result.plant.chambers, dimension: 'count' }, () =>
    sumWorking(
      'chambers of each type, added up',
      scenario.chambers.map((_, k) => inputTerm(plan, `${path}.chambers.${k}.count`, numbered('n', k + 1))),
    ),
  );
}

const WEEK_TERM = fixedTerm(
  { label: 'Hours in a week', symbol: 'T', value: WEEK, dimension: 'timePerWeek' },
  'Seven days of twenty-four hours.',
);

/** All chamber hours of a week. */
export function chamberHoursTerm(context: WorkContext, symbol: string): Term {
  const value = context.result.plant.chambers * WEEK;
  return workedTerm({ label: 'All chamber hours', symbol, value, dimension: 'timePerWeek' }, () =>
    worked(
      'chambers × hours in a week',
      'n × T',
      [chamberCountTerm(context, 'n'), WEEK_TERM],
      ([n = 0, T = 0]) => n * T,
    ),
  );
}

/** People's time on shift in a week. */
export function onShiftTerm({ plan, scenario, result }: WorkContext, symbol: string): Term {
  const pattern = findById(plan.crew.patterns, scenario.pattern, 'shift pattern');
  return countedTerm(
    { label: 'Time on shift a week', symbol, value: result.plant.crew.onShift, dimension: 'timePerWeek' },
    { what: `Hours from start to end × people, added up over the shifts of “${pattern.name}” from Monday to Sunday.` },
  );
}

export function chamberUseWorking(context: WorkContext): Working {
  const busy = WORKING_PHASES.map((phase, k) => phaseTerm(context, phase, numbered('t', k + 1)));
  return worked(
    'hours spent on a batch, waiting and holding left out ÷ (chambers × hours in a week)',
    `(${summed(busy)}) ÷ (n × T)`,
    [...busy, chamberCountTerm(context, 'n'), WEEK_TERM],
    (values) => addUp(values.slice(0, -2)) / ((values.at(-2) ?? 1) * (values.at(-1) ?? 1)),
  );
}

export function waitingForPeopleWorking(context: WorkContext): Working {
  const terms = WAITS_FOR_PEOPLE.map((phase, k) => phaseTerm(context, phase, numbered('t', k + 1)));
  return sumWorking('waiting to be loaded + held under vacuum + waiting to be cleaned', terms);
}

export function waitingForPumpWorking(context: WorkContext): Working {
  return sumWorking('hours between frozen and the start of pump-down', [phaseTerm(context, 'waitingForPump', 't')]);
}
