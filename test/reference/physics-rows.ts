import { DRYING_ROWS } from './physics-rows-drying.ts';
import { FOOD_ROWS } from './physics-rows-food.ts';
import { ICE_ROWS } from './physics-rows-ice.ts';
import { VACUUM_ROWS } from './physics-rows-vacuum.ts';
import type { ReferenceRow } from './reference-row.ts';

/** Every published or independently recomputed value of the physics laws. */
export const PHYSICS_ROWS: readonly ReferenceRow[] = [...ICE_ROWS, ...FOOD_ROWS, ...VACUUM_ROWS, ...DRYING_ROWS];
