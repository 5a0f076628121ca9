import { WORKBOOK_TYPE, workbookBytes } from '../../lib/io/workbook-file.ts';
import type { LenderBasis } from '../../lib/model/lender-basis-types.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { lenderWorkbook } from '../../lib/views/workbook/lender-workbook.ts';

/** The lender's workbook, ready to be handed to the user. */
export async function saveableWorkbook(
  plan: Plan,
  basis: LenderBasis,
  result: ScenarioResult,
  paper: 'a4' | 'letter',
): Promise<Blob> {
  const bytes = await workbookBytes(lenderWorkbook(plan, basis, result), { paper, made: new Date() });
  return new Blob([bytes as BlobPart], { type: WORKBOOK_TYPE });
}
