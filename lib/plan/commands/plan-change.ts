import type { Finding, Result } from '../../result.ts';
import type { Plan } from '../plan-types.ts';

/** The plan after a change, or why it could not be made. */
export type PlanChange = Result<Plan, readonly Finding[]>;
