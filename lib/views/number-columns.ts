import type { NumberField, QuantityField } from '../inputs/input-field.ts';
import { inBase } from '../inputs/quantity.ts';
import { fieldOf } from '../inputs/register.ts';
import { LIMITS } from '../plan/limits.ts';
import type { ChamberType, Scenario } from '../plan/plan-types.ts';
import { fail, type Result, succeed } from '../result.ts';
import { fromBase, toBase } from '../units/convert.ts';
import type { EntryColumn } from './entry-column.ts';
import { countOf } from './format-number.ts';
import { quantityText, type ShownAs, shownValue, unitText } from './format-quantity.ts';
import type { TextFault } from './mix-text.ts';
import { readFigure } from './read-figure.ts';

function numberField(id: string): NumberField {
  const field = fieldOf(id);
  if (field.kind !== 'number') throw new RangeError(`the input "${id}" is no number`);
  return field;
}

function quantityField(id: string): QuantityField {
  const field = fieldOf(id);
  if (field.kind !== 'quantity') throw new RangeError(`the input "${id}" is no quantity`);
  return field;
}

function plainFigure(value: number): string {
  return String(Number(value.toPrecision(12)));
}

interface NumberLook {
  readonly key: 'groupSize' | 'purchaseMonth' | 'freezers';
  readonly width: number;
  readonly isHeadline: boolean;
  readonly isIdle: (scenario: Scenario) => boolean;
}

/** A column for one of the scenario's own numbers. */
export function numberColumn(look: NumberLook, shown: ShownAs): EntryColumn {
  const { key, ...rest } = look;
  const field = numberField(`scenario.${key}`);
  const base = (scenario: Scenario) => toBase(scenario[key], field.dimension, field.unit);
  return {
    id: key,
    label: field.label,
    meaning: field.meaning,
    unit: unitText(field.dimension, shown),
    isFigure: true,
    ...rest,
    options: null,
    text: (scenario) => quantityText(base(scenario), field.dimension, shown).replace(/\.0$/, ''),
    plainText: (scenario) => plainFigure(shownValue(base(scenario), field.dimension, shown)),
    edit: (scenario, text) => {
      const read = readFigure(text, field, shown);
      return read.ok ? succeed({ ...scenario, [key]: fromBase(read.value, field.dimension, field.unit) }) : read;
    },
    emptied: (scenario) => ({ ...scenario, [key]: field.value ?? 0 }),
  };
}

/** Money that a scenario needs beside its machines. */
export function extraCapitalColumn(shown: ShownAs): EntryColumn {
  const field = quantityField('scenario.extraCapital');
  const base = (scenario: Scenario) => inBase(scenario.extraCapital, 'money');
  const changed = (scenario: Scenario, value: number): Scenario => ({
    ...scenario,
    extraCapital: { ...scenario.extraCapital, value, low: undefined, high: undefined },
  });
  return {
    id: 'extraCapital',
    label: field.label,
    meaning: field.meaning,
    unit: unitText('money', shown),
    isFigure: true,
    isHeadline: false,
    width: 96,
    options: null,
    text: (scenario) => quantityText(base(scenario), 'money', shown),
    plainText: (scenario) => plainFigure(base(scenario)),
    isIdle: () => false,
    edit: (scenario, text) => {
      const read = readFigure(text, field, shown);
      return read.ok ? succeed(changed(scenario, read.value)) : read;
    },
    emptied: (scenario) => changed(scenario, 0),
  };
}

function countIn(scenario: Scenario, chamberId: string): number {
  return scenario.chambers.find((entry) => entry.chamber === chamberId)?.count ?? 0;
}

/** The scenario with so many chambers of one type; types it has none of are left out of its list. */
function withChambers(scenario: Scenario, chamber: string, count: number): Scenario {
  const known = scenario.chambers.some((entry) => entry.chamber === chamber);
  const listed = known ? scenario.chambers : [...scenario.chambers, { chamber, count }];
  const counted = listed.map((entry) => (entry.chamber === chamber ? { ...entry, count } : entry));
  return { ...scenario, chambers: counted.filter((entry) => entry.count > 0) };
}

function checkedChambers(scenario: Scenario): Result<Scenario, TextFault> {
  const total = scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
  const most = LIMITS.chambersInScenario;
  if (total >= 1 && total <= most) return succeed(scenario);
  const problem = total < 1 ? 'The scenario would have no chamber.' : `That makes ${countOf(total, 'chamber')}.`;
  return fail({ problem, remedy: `Give it 1 to ${most} chambers in all.` });
}

/** How many chambers of one type; with a single type the column is simply called "Chambers". */
export function chamberColumn(chamber: ChamberType, isOnly: boolean, shown: ShownAs): EntryColumn {
  const field = numberField('scenarioChamber.count');
  return {
    id: `chambers:${chamber.id}`,
    label: isOnly ? field.label : `${chamber.name}s`,
    meaning: isOnly ? 'How many chambers the shop has.' : `How many chambers of the type "${chamber.name}" it has.`,
    unit: '',
    isFigure: true,
    isHeadline: true,
    width: 78,
    options: null,
    text: (scenario) => quantityText(countIn(scenario, chamber.id), 'count', shown),
    plainText: (scenario) => String(countIn(scenario, chamber.id)),
    isIdle: () => false,
    edit: (scenario, text) => {
      const read = readFigure(text, field, shown);
      return read.ok ? checkedChambers(withChambers(scenario, chamber.id, read.value)) : read;
    },
    emptied: (scenario) => {
      const checked = checkedChambers(withChambers(scenario, chamber.id, 0));
      return checked.ok ? checked.value : null;
    },
  };
}
