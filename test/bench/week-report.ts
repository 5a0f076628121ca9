import { STANDARD_CONTROL, type StepControl } from '../../lib/plant/group-advance.ts';
import type { PlantReport } from '../../lib/plant/report-types.ts';
import type { ShopSpec } from '../../lib/plant/types.ts';
import { builtModule } from './built-module.ts';

const { simulateShop } = builtModule<typeof import('../../lib/plant/simulate-shop.ts')>('lib/plant/simulate-shop.ts');

/** A hundred times tighter than usual: batch times of whole weeks then keep within 0.01 %. */
export const TIGHT_WEEKS: StepControl = { tolerance: 1e-5, longest: 300 };

/** The report of a shop that can run. */
export function weekReport(spec: ShopSpec, control: StepControl = STANDARD_CONTROL): PlantReport {
  const outcome = simulateShop(spec, control);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.error));
  return outcome.value;
}
