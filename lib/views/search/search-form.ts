import { baseValues } from '../../inputs/base-values.ts';
import type { NumberField, QuantityField } from '../../inputs/input-field.ts';
import { fieldOf } from '../../inputs/register.ts';
import type { OptionLimits, OptionSpace } from '../../insight/options/option-types.ts';
import type { Plan, Scenario } from '../../plan/plan-types.ts';
import { readCell } from '../../plan/read-cell.ts';
import { fail, type Result, succeed } from '../../result.ts';
import { shownUnit } from '../../units/convert.ts';
import type { ShownAs } from '../format-quantity.ts';
import { quantityText } from '../format-quantity.ts';
import type { TextFault } from '../mix-text.ts';
import { readFigure } from '../read-figure.ts';

/** How many of one type, as typed. */
export interface CountTexts {
  readonly least: string;
  readonly most: string;
}

/** The limits as they are filled in; empty for no limit. */
export type LimitTexts = Readonly<Record<keyof OptionLimits, string>>;

/** What may be combined and what is not to be gone beyond, as it is filled in. */
export interface SearchForm {
  readonly baseId: string;
  readonly limits: LimitTexts;
  /** By id of the chamber type. */
  readonly chambers: Readonly<Record<string, CountTexts>>;
  readonly mostChambers: string;
  readonly freezers: CountTexts;
  readonly choices: SearchChoices;
}

/** Lists of which any entry may be taken. */
export type SearchChoices = Pick<
  OptionSpace,
  'arrangements' | 'pumps' | 'hoses' | 'patterns' | 'practices' | 'roughingPumps' | 'spares'
>;

export type LimitKey = keyof OptionLimits;

export type ChoiceKey = keyof SearchChoices;

/** What the limits are called, in the order of the form. */
export const LIMIT_LABELS: Readonly<Record<LimitKey, string>> = {
  budget: 'Budget',
  dscrLine: 'Debt cover (DSCR)',
  supplyCurrent: 'Power supply',
  circuits: 'Circuits for machines',
  floorSpace: 'Floor for machines',
};

/** What is wrong where: by limit, by id of a chamber type, by name of a list. */
export type SearchFaults = Readonly<Record<string, TextFault>>;

/** A form that has been read. */
export interface SearchAsked {
  readonly baseId: string;
  readonly space: OptionSpace;
  readonly limits: OptionLimits;
}

/** Chambers that may come on top of today's. */
const MORE_CHAMBERS = 4;

/** Of a type that the shop has none of. */
const OF_A_NEW_TYPE = 2;

/** More chambers than this are not a small shop any more. */
const MOST_CHAMBERS = 24;

/** Rows of the register whose unit and range a limit has. */
const LIMIT_FIELDS: Readonly<Record<Exclude<keyof OptionLimits, 'budget'>, string>> = {
  dscrLine: 'financing.dscrLine',
  supplyCurrent: 'site.supplyCurrent',
  circuits: 'site.panelCircuits',
  floorSpace: 'site.floorSpace',
};

function limitField(limit: keyof typeof LIMIT_FIELDS): QuantityField | NumberField {
  const field = fieldOf(LIMIT_FIELDS[limit]);
  if (field.kind !== 'quantity' && field.kind !== 'number') throw new RangeError(`"${field.id}" is no figure`);
  return field;
}

/** The unit in which a limit is asked for. */
export function limitUnit(limit: keyof OptionLimits, shown: ShownAs): string {
  if (limit === 'budget') return shown.currency;
  if (limit === 'dscrLine') return 'at least';
  return shownUnit(limitField(limit).dimension, shown.system);
}

/** A figure as it would be typed: without marks between the thousands. */
function typed(limit: keyof typeof LIMIT_FIELDS, value: number | null, shown: ShownAs): string {
  return value === null ? '' : quantityText(value, limitField(limit).dimension, shown).replaceAll(',', '');
}

/** The limits that the plan knows of; the budget is for the owner to say. */
function knownLimits(plan: Plan, shown: ShownAs): LimitTexts {
  const site = baseValues('site', plan.site);
  return {
    budget: '',
    dscrLine: String(baseValues('financing', plan.financing).dscrLine),
    supplyCurrent: typed('supplyCurrent', site.supplyCurrent, shown),
    circuits: typed('circuits', site.panelCircuits, shown),
    floorSpace: typed('floorSpace', site.floorSpace, shown),
  };
}

function countOf(scenario: Scenario | undefined, chamber: string): number {
  const own = scenario?.chambers.filter((entry) => entry.chamber === chamber) ?? [];
  return own.reduce((sum, { count }) => sum + count, 0);
}

function countsOf(today: Scenario | undefined, chamber: string): CountTexts {
  const owned = countOf(today, chamber);
  return { least: String(owned), most: String(owned > 0 ? owned + MORE_CHAMBERS : OF_A_NEW_TYPE) };
}

/** A form to begin with: what the plan has and knows, everything of its catalogue but hoses and ways to start. */
export function startForm(plan: Plan, baseId: string, shown: ShownAs): SearchForm {
  const [today] = plan.scenarios;
  const base = plan.scenarios.find(({ id }) => id === baseId) ?? today;
  const all = plan.chambers.reduce((sum, { id }) => sum + countOf(today, id), 0);
  const freezers = String(base?.freezers ?? 0);
  return {
    baseId: base?.id ?? '',
    limits: knownLimits(plan, shown),
    chambers: Object.fromEntries(plan.chambers.map(({ id }) => [id, countsOf(today, id)])),
    mostChambers: String(all + MORE_CHAMBERS),
    freezers: { least: freezers, most: freezers },
    choices: {
      arrangements: ['own', 'shared', 'groups'],
      pumps: plan.pumps.map(({ id }) => id),
      hoses: base ? [base.hose] : [],
      patterns: plan.crew.patterns.map(({ id }) => id),
      practices: base ? [base.startPractice] : [],
      roughingPumps: base?.roughingPump ? [base.roughingPump] : plan.pumps.slice(0, 1).map(({ id }) => id),
      spares: base ? [base.sparePump] : [],
    },
  };
}

/** What belongs to a plan that has changed meanwhile: things that are gone are dropped, new chamber types join in. */
export function formFor(plan: Plan, form: SearchForm, shown: ShownAs): SearchForm {
  const fresh = startForm(plan, form.baseId, shown);
  const known = (ids: readonly string[], list: readonly { readonly id: string }[]) =>
    ids.filter((id) => list.some((entry) => entry.id === id));
  return {
    ...form,
    baseId: fresh.baseId,
    chambers: Object.fromEntries(plan.chambers.map(({ id }) => [id, form.chambers[id] ?? { least: '0', most: '0' }])),
    choices: {
      ...form.choices,
      pumps: known(form.choices.pumps, plan.pumps),
      hoses: known(form.choices.hoses, plan.hoses),
      patterns: known(form.choices.patterns, plan.crew.patterns),
      roughingPumps: known(form.choices.roughingPumps, plan.pumps),
    },
  };
}

interface ChoiceList {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
}

function named(list: readonly { readonly id: string; readonly name: string }[]): ChoiceList['options'] {
  return list.map(({ id, name }) => ({ value: id, label: name }));
}

function registered(id: string): ChoiceList['options'] {
  const field = fieldOf(id);
  return field.kind === 'choice' ? field.options.map(({ value, label }) => ({ value, label })) : [];
}

/** The lists that may be chosen from; roughing pumps only where the form starts chambers with one. */
export function choiceLists(plan: Plan, { choices }: SearchForm): Readonly<Partial<Record<ChoiceKey, ChoiceList>>> {
  const roughing = { label: 'Roughing pumps', options: named(plan.pumps) };
  return {
    arrangements: { label: 'Pumps are', options: registered('scenario.pumpArrangement') },
    pumps: { label: 'Types of pump', options: named(plan.pumps) },
    patterns: { label: 'Hours', options: named(plan.crew.patterns) },
    hoses: { label: 'Hoses', options: named(plan.hoses) },
    practices: { label: 'When one chamber starts', options: registered('scenario.startPractice') },
    ...(choices.practices.includes('roughing') ? { roughingPumps: roughing } : {}),
    spares: { label: 'Spare pump', options: registered('scenario.sparePump') },
  };
}

function readCount(text: string): Result<number, TextFault> {
  const read = readCell(text, { dimension: 'count', shown: '', currency: '' });
  if (!read.ok) return fail({ problem: read.error.problem, remedy: read.error.remedy });
  const { value } = read.value;
  if (Number.isInteger(value) && value >= 0 && value <= MOST_CHAMBERS) return succeed(value);
  return fail({ problem: `This is no number of machines.`, remedy: `Give a whole number from 0 to ${MOST_CHAMBERS}.` });
}

function readBudget(text: string, shown: ShownAs): Result<number, TextFault> {
  const read = readCell(text, { dimension: 'money', shown: 'money', currency: shown.currency });
  if (!read.ok) return fail({ problem: read.error.problem, remedy: read.error.remedy });
  if (read.value.value >= 0) return succeed(read.value.value);
  return fail({ problem: 'A budget below nothing buys nothing.', remedy: 'Give 0 or more, or leave it empty.' });
}

/** Cover is spoken of as so many times the payments, not in per cent. */
const TIMES = '1';

function readLimit(limit: LimitKey, text: string, shown: ShownAs): Result<number | null, TextFault> {
  if (text.trim() === '') return succeed(null);
  if (limit === 'budget') return readBudget(text, shown);
  const field = limitField(limit);
  return readFigure(text, field, shown, limit === 'dscrLine' ? TIMES : undefined);
}

/** Collects what is wrong while a form is read. */
class Reading {
  readonly faults: Record<string, TextFault> = {};

  take<Value>(place: string, read: Result<Value, TextFault>, otherwise: Value): Value {
    if (read.ok) return read.value;
    this.faults[place] = read.error;
    return otherwise;
  }

  counts(place: string, { least, most }: CountTexts): { readonly least: number; readonly most: number } {
    const counts = { least: this.take(place, readCount(least), 0), most: this.take(place, readCount(most), 0) };
    if (counts.most < counts.least && !this.faults[place]) {
      this.faults[place] = { problem: 'At most is less than at least.', remedy: 'Let the second be the larger.' };
    }
    return counts;
  }

  chosen(place: string, list: readonly unknown[]): void {
    if (list.length === 0) this.faults[place] = { problem: 'Nothing is chosen.', remedy: 'Choose at least one.' };
  }
}

function readSpace(form: SearchForm, plan: Plan, reading: Reading): OptionSpace {
  const chambers = plan.chambers.map(({ id }) => ({
    chamber: id,
    ...reading.counts(`chamber ${id}`, form.chambers[id] ?? { least: '0', most: '0' }),
  }));
  const mostChambers = reading.take('mostChambers', readCount(form.mostChambers), 1);
  const least = chambers.reduce((sum, range) => sum + range.least, 0);
  if (!reading.faults.mostChambers && (mostChambers < least || mostChambers < 1)) {
    const problem = mostChambers < 1 ? 'There would be no chamber.' : `At least ${least} are asked for.`;
    reading.faults.mostChambers = { problem, remedy: 'Allow more in all, or ask for fewer.' };
  }
  for (const [place, list] of Object.entries(form.choices)) if (place !== 'roughingPumps') reading.chosen(place, list);
  if (form.choices.practices.includes('roughing')) reading.chosen('roughingPumps', form.choices.roughingPumps);
  return { chambers, mostChambers, freezers: reading.counts('freezers', form.freezers), ...form.choices };
}

/** What a form asks for, or what is wrong in it and where. */
export function readSearchForm(form: SearchForm, plan: Plan, shown: ShownAs): Result<SearchAsked, SearchFaults> {
  const reading = new Reading();
  const limit = (name: keyof OptionLimits) =>
    reading.take(`limit ${name}`, readLimit(name, form.limits[name], shown), null);
  const limits: OptionLimits = {
    budget: limit('budget'),
    dscrLine: limit('dscrLine'),
    supplyCurrent: limit('supplyCurrent'),
    circuits: limit('circuits'),
    floorSpace: limit('floorSpace'),
  };
  const space = readSpace(form, plan, reading);
  return Object.keys(reading.faults).length > 0
    ? fail(reading.faults)
    : succeed({ baseId: form.baseId, space, limits });
}
