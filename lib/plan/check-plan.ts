import { type Finding, fail, type Result, succeed } from '../result.ts';
import { issueFindings } from './issue-findings.ts';
import type { Plan } from './plan-types.ts';
import { crewRule } from './rules/crew-rule.ts';
import { equipmentRule } from './rules/equipment-rule.ts';
import { financingRule } from './rules/financing-rule.ts';
import { idRule } from './rules/id-rule.ts';
import { logRule } from './rules/log-rule.ts';
import { productRule } from './rules/product-rule.ts';
import { referenceRule } from './rules/reference-rule.ts';
import { scenarioRule } from './rules/scenario-rule.ts';
import { shiftRule } from './rules/shift-rule.ts';
import { stageRule } from './rules/stage-rule.ts';
import { tariffRule } from './rules/tariff-rule.ts';
import { planSchema } from './schema.ts';

const RULES = [
  idRule,
  referenceRule,
  scenarioRule,
  stageRule,
  productRule,
  equipmentRule,
  shiftRule,
  crewRule,
  tariffRule,
  financingRule,
  logRule,
] as const;

/** The document as a plan, or all that is wrong with it: first its shape and ranges, then the rules across fields. */
export function checkPlan(document: unknown): Result<Plan, readonly Finding[]> {
  const parsed = planSchema.safeParse(document);
  if (!parsed.success) return fail(issueFindings(parsed.error.issues, document));
  const findings = RULES.flatMap((rule) => rule(parsed.data));
  return findings.length === 0 ? succeed(parsed.data) : fail(findings);
}
