import type { PlantProblem } from '../plant/report-types.ts';
import { assertNever, type Finding } from '../result.ts';

function finding(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'error', field, value, problem, remedy };
}

function hours(seconds: number): string {
  return `${(seconds / 3600).toFixed(1)} h`;
}

function kilograms(mass: number): string {
  return `${mass.toFixed(1)} kg`;
}

function pascals(pressure: number): string {
  return `${pressure.toPrecision(3)} Pa (${(pressure / 0.1333224).toFixed(0)} mTorr)`;
}

/** A problem of the week simulation in plain words: where it lies, what is wrong, what would mend it. */
export function plantFinding(problem: PlantProblem): Finding {
  switch (problem.kind) {
    case 'trapOverfill':
      return finding(
        `products.${problem.productId}.load`,
        kilograms(problem.water),
        `One batch gives off ${kilograms(problem.water)} of water, but the trap of "${problem.chamber}" holds ${kilograms(problem.capacity)} of ice.`,
        'Load less per tray, or use a chamber whose trap holds more.',
      );
    case 'pumpCannotReach':
      return finding(
        'pumps',
        problem.pump,
        `"${problem.pump}" only pulls these chambers down to ${pascals(problem.reached)}; drying starts below ${pascals(problem.pressure)}.`,
        'Use a stronger pump, hang fewer chambers on it, or find and mend the leaks.',
      );
    case 'dryingStalls':
      return finding(
        `products.${problem.productId}`,
        problem.chamber,
        `A batch in "${problem.chamber}" is still not dry after ten days.`,
        'Look at the shelf temperature, the pressure ceiling, the leak and the pump: one of them stops the drying.',
      );
    case 'neverDry':
      return finding(
        `products.${problem.productId}.targetMoisture`,
        problem.chamber,
        'The moisture asked for is not above the moisture at which this product settles, so it is never reached.',
        'Ask for a little more moisture, or correct the moisture it settles at.',
      );
    case 'nobodyCanDo':
      return finding(
        'crew.patterns',
        hours(problem.longestShift),
        `The task "${problem.task}" takes ${hours(problem.needed)}, longer than the longest shift (${hours(problem.longestShift)}).`,
        'Lengthen a shift, put somebody on it, or load less at a time.',
      );
    case 'freezingImpossible':
      return finding(
        `products.${problem.productId}.frozenLimit`,
        problem.chamber,
        `Neither the shelf of "${problem.chamber}" nor the freezer is cold enough to freeze this product firmly.`,
        'Freeze colder, or correct the temperature above which its frozen part softens.',
      );
    case 'freezerTooSmall':
      return finding(
        'freezer.capacity',
        kilograms(problem.capacity),
        `One load weighs ${kilograms(problem.load)}, more than the freezer holds.`,
        'Use a larger freezer, or load less per tray.',
      );
    case 'nothingToMake':
      return finding(
        'scenario.mix',
        '0 %',
        'There is no chamber, or no product with a share above zero.',
        'Give the scenario a chamber and a product.',
      );
    default:
      return assertNever(problem);
  }
}
