import type { Plan, Scenario } from '../plan/plan-types.ts';
import { fail, succeed } from '../result.ts';
import { choiceColumn, referenceColumn } from './choice-column.ts';
import type { EntryColumn } from './entry-column.ts';
import type { ShownAs } from './format-quantity.ts';
import { chamberColumn, extraCapitalColumn, numberColumn } from './number-columns.ts';
import { mixColumn, NAME_COLUMN } from './text-columns.ts';

function pumpColumn(plan: Plan): EntryColumn {
  return referenceColumn(plan.pumps, {
    key: 'pump',
    label: 'Pump type',
    meaning: 'Which pump empties the chambers.',
    width: 136,
    isHeadline: false,
    none: null,
  });
}

function roughingColumn(plan: Plan): EntryColumn {
  const column = referenceColumn(plan.pumps, {
    key: 'roughingPump',
    label: 'Roughing pump',
    meaning: 'The second pump that takes a chamber down from the open air, when chambers start that way.',
    width: 136,
    isHeadline: false,
    none: 'none',
    isIdle: (scenario) => scenario.startPractice !== 'roughing',
  });
  // Without its roughing pump this way of starting cannot be, so it goes back to the usual one.
  const tidied = (scenario: Scenario): Scenario =>
    scenario.roughingPump === null && scenario.startPractice === 'roughing'
      ? { ...scenario, startPractice: 'isolate' }
      : scenario;
  return {
    ...column,
    edit: (scenario, text) => {
      const edited = column.edit(scenario, text);
      return edited.ok ? succeed(tidied(edited.value)) : edited;
    },
    emptied: (scenario) => tidied({ ...scenario, roughingPump: null }),
  };
}

/** Starting on a roughing pump needs one: the first of the catalogue, until another is chosen. */
function startPracticeColumn(plan: Plan): EntryColumn {
  const column = choiceColumn('startPractice', { width: 148, isHeadline: false });
  return {
    ...column,
    edit: (scenario, text) => {
      const edited = column.edit(scenario, text);
      if (!edited.ok || edited.value.startPractice !== 'roughing') return edited;
      return succeed({ ...edited.value, roughingPump: edited.value.roughingPump ?? plan.pumps[0]?.id ?? null });
    },
  };
}

function hoseColumn(plan: Plan): EntryColumn {
  return referenceColumn(plan.hoses, {
    key: 'hose',
    label: 'Hose',
    meaning: 'Which hose ties each chamber to its pump.',
    width: 136,
    isHeadline: false,
    none: null,
  });
}

function patternColumn(plan: Plan): EntryColumn {
  return referenceColumn(plan.crew.patterns, {
    key: 'pattern',
    label: 'Shifts',
    meaning: 'When people are there to load, unload and clean.',
    width: 148,
    isHeadline: false,
    none: null,
  });
}

/** Which scenario runs until this one is bought: a purchase in stages. */
function afterColumn(plan: Plan): EntryColumn {
  const column = referenceColumn(plan.scenarios.slice(1), {
    key: 'after',
    label: 'Comes after',
    meaning: 'The scenario that runs until this one is bought; what that one has need not be bought again.',
    width: 136,
    isHeadline: false,
    none: 'today',
    isIdle: (scenario) => scenario.id === plan.scenarios[0]?.id,
  });
  return {
    ...column,
    edit: (scenario, text) => {
      const edited = column.edit(scenario, text);
      if (!edited.ok || edited.value.after !== scenario.id) return edited;
      return fail({ problem: 'A scenario cannot come after itself.', remedy: 'Choose another one, or today.' });
    },
  };
}

/** How the plan wants its figures shown. */
export function shownAs(plan: Plan): ShownAs {
  return { system: plan.site.unitSystem, currency: plan.site.currency };
}

/** All that the columns hang on: while every one of these is the same, so are the columns. */
export function columnSources(plan: Plan): readonly unknown[] {
  const names = JSON.stringify(plan.scenarios.map(({ id, name }) => [id, name]));
  return [plan.chambers, plan.pumps, plan.hoses, plan.products, plan.crew, plan.site, plan.freezer === null, names];
}

/** The columns of the set-up, in the order of the sheet; the name comes first. */
export function entryColumns(plan: Plan): readonly EntryColumn[] {
  const shown = shownAs(plan);
  return [
    NAME_COLUMN,
    ...plan.chambers.map((chamber) => chamberColumn(chamber, plan.chambers.length === 1, shown)),
    choiceColumn('pumpArrangement', { width: 98, isHeadline: true }),
    numberColumn(
      { key: 'groupSize', width: 92, isHeadline: false, isIdle: (scenario) => scenario.pumpArrangement !== 'groups' },
      shown,
    ),
    pumpColumn(plan),
    mixColumn(plan),
    patternColumn(plan),
    hoseColumn(plan),
    startPracticeColumn(plan),
    roughingColumn(plan),
    choiceColumn('startPattern', { width: 124, isHeadline: false }),
    choiceColumn('sparePump', { width: 108, isHeadline: false }),
    numberColumn({ key: 'freezers', width: 84, isHeadline: false, isIdle: () => plan.freezer === null }, shown),
    afterColumn(plan),
    numberColumn({ key: 'purchaseMonth', width: 92, isHeadline: false, isIdle: () => false }, shown),
    extraCapitalColumn(shown),
  ];
}
