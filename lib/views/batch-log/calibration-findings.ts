import type { BatchUse, Calibration, ComparedBatch } from '../../insight/calibration/calibration.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { formatPercent, formatSensible } from '../format-number.ts';
import { fittedField } from './fitted-quantity.ts';

/** Something the user should know about the log or the fit. */
export interface CalibrationFinding {
  readonly problem: string;
  readonly remedy: string;
}

/** Hours that are missed by more than this after fitting are not explained. */
const UNEXPLAINED = 0.2;
/** A value this many standard deviations from where it was believed to lie deserves a second look. */
const STRAINED = 2;

function hours(seconds: number): string {
  return `${formatSensible(seconds / 3600)} h`;
}

function nameIn(items: readonly { readonly id: string; readonly name: string }[], id: string): string {
  return items.find((item) => item.id === id)?.name ?? id;
}

function batchWords(plan: Plan, { product, date }: ComparedBatch): string {
  return `${nameIn(plan.products, product)} of ${date}`;
}

const LEFT_OUT: Readonly<
  Record<Exclude<BatchUse, 'fitted'>, (batch: ComparedBatch, name: string) => CalibrationFinding>
> = {
  odd: ({ time, after }, name) => ({
    problem: `${name} took ${hours(time)} where the others lead to expect ${after === null ? 'far less' : hours(after)}; it was left out of the fit.`,
    remedy: 'Log the hours until it was dry, not until somebody came; correct it if it is a slip.',
  }),
  neverDry: (_, name) => ({
    problem: `${name} would never get dry in the model, so it had no say.`,
    remedy: "Check the chamber, and the pump and hose of today's row.",
  }),
  loadOutOfRange: (_, name) => ({
    problem: `${name} weighs more, or less, than the shelves of its chamber can hold.`,
    remedy: 'Check its weight and its chamber type.',
  }),
};

function leftOut(plan: Plan, { batches }: Calibration): CalibrationFinding[] {
  return batches.flatMap((batch) =>
    batch.use === 'fitted' ? [] : [LEFT_OUT[batch.use](batch, batchWords(plan, batch))],
  );
}

function contradictory(plan: Plan, { contradictions }: Calibration): CalibrationFinding[] {
  return contradictions.map(({ product, chamber, shortest, longest }) => ({
    problem: `Like loads of ${nameIn(plan.products, product)} in ${nameIn(plan.chambers, chamber)} took ${hours(shortest.time)} on ${shortest.date} and ${hours(longest.time)} on ${longest.date}; both cannot be right, so all ranges are wide.`,
    remedy: 'Look both up: a slip of the pen, a batch that waited for somebody, thicker slices or old oil?',
  }));
}

function untested(plan: Plan, { untested: ids }: Calibration): CalibrationFinding[] {
  return ids.map((id) => ({
    problem: `${nameIn(plan.chambers, id)} has no pressure-rise test, so its leak is taken as it stands in the plan.`,
    remedy: 'Shut the valve of the empty, cold chamber for ten minutes and log the two pressures.',
  }));
}

function levelling(plan: Plan, { levellingOff }: Calibration): CalibrationFinding[] {
  return levellingOff.map((id) => ({
    problem: `Longer tests of ${nameIn(plan.chambers, id)} rise more slowly than short ones, so part of the rise is vapour and not a leak.`,
    remedy: 'Test the chamber empty and dry, with the trap cold, and for longer.',
  }));
}

function unexplained({ miss }: Calibration): CalibrationFinding[] {
  if (!miss || miss.after <= UNEXPLAINED) return [];
  return [
    {
      problem: `Even with fitted values the model misses the hours by ${formatPercent(miss.after)}: something it does not know of is at work.`,
      remedy:
        "Check pump and hose of today's row, the thickness and shelf temperatures of the products, and whether hours were logged until dry.",
    },
  ];
}

function strained(plan: Plan, { values }: Calibration): CalibrationFinding[] {
  return values
    .filter(({ moved }) => Math.abs(moved) > STRAINED)
    .map((value) => ({
      problem: `"${fittedField(value).label}" of ${nameIn(plan[value.list], value.id)} had to move far from where it was believed to lie.`,
      remedy: 'Check what stands in the plan for it, and whether something else in the plan is off instead.',
    }));
}

function unfinished({ converged }: Calibration): CalibrationFinding[] {
  if (converged) return [];
  return [{ problem: 'The fit was still improving when it was stopped.', remedy: 'Take its values and fit again.' }];
}

/** What is wrong with the log, what was left out of the fit, and what the fit could not explain. */
export function calibrationFindings(plan: Plan, calibration: Calibration): readonly CalibrationFinding[] {
  return [
    ...contradictory(plan, calibration),
    ...leftOut(plan, calibration),
    ...unexplained(calibration),
    ...strained(plan, calibration),
    ...untested(plan, calibration),
    ...levelling(plan, calibration),
    ...unfinished(calibration),
  ];
}
