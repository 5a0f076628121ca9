import type { ChoiceField } from '../inputs/input-field.ts';
import { fieldOf } from '../inputs/register.ts';
import type { Scenario } from '../plan/plan-types.ts';
import { succeed } from '../result.ts';
import { type ChoiceWord, type EntryColumn, findChoice } from './entry-column.ts';

/** The keys of a scenario that hold one of a few words. */
type ChoiceKey = 'pumpArrangement' | 'startPractice' | 'startPattern' | 'sparePump';

/** The keys of a scenario that name something in the plan. */
type ReferenceKey = 'pump' | 'hose' | 'pattern' | 'roughingPump' | 'after';

interface Look {
  readonly width: number;
  readonly isHeadline: boolean;
}

interface Named {
  readonly id: string;
  readonly name: string;
}

function choiceField(id: string): ChoiceField {
  const field = fieldOf(id);
  if (field.kind !== 'choice') throw new RangeError(`the input "${id}" is no choice`);
  return field;
}

/** A column of the register's own choices. */
export function choiceColumn(key: ChoiceKey, look: Look): EntryColumn {
  const field = choiceField(`scenario.${key}`);
  const labelOf = (scenario: Scenario) =>
    field.options.find((option) => option.value === scenario[key])?.label ?? scenario[key];
  return {
    id: key,
    label: field.label,
    meaning: field.meaning,
    unit: '',
    isFigure: false,
    ...look,
    options: field.options.map((option) => option.label),
    text: labelOf,
    plainText: labelOf,
    isIdle: () => false,
    edit: (scenario, text) => {
      const found = findChoice(text, field.options);
      return found.ok ? succeed({ ...scenario, [key]: found.value }) : found;
    },
    emptied: (scenario) => ({ ...scenario, [key]: field.value }),
  };
}

interface ReferenceLook extends Look {
  readonly key: ReferenceKey;
  readonly label: string;
  readonly meaning: string;
  /** Words for "none"; null when something must be chosen. */
  readonly none: string | null;
  readonly isIdle?: (scenario: Scenario) => boolean;
}

/** A column that names an item of the plan's catalogue, such as a pump type. */
export function referenceColumn(items: readonly Named[], look: ReferenceLook): EntryColumn {
  const { key, none, isIdle = () => false, ...rest } = look;
  const named: readonly ChoiceWord<string | null>[] = items.map(({ id, name }) => ({ value: id, label: name }));
  const choices = none === null ? named : [{ value: null, label: none }, ...named];
  const textOf = (scenario: Scenario) =>
    choices.find((choice) => choice.value === scenario[key])?.label ?? scenario[key] ?? '';
  return {
    id: key,
    ...rest,
    unit: '',
    isFigure: false,
    options: choices.map((choice) => choice.label),
    text: textOf,
    plainText: textOf,
    isIdle,
    edit: (scenario, text) => {
      const found = findChoice(text, choices);
      return found.ok ? succeed({ ...scenario, [key]: found.value }) : found;
    },
    emptied: (scenario) => (none === null ? null : { ...scenario, [key]: null }),
  };
}
