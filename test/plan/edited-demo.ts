import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';

/** A deep copy of the demo plan as loose JSON, changed by the caller; what comes out may be no plan any more. */
export function editedDemo(edit: (document: Loose) => void): Loose {
  // Through text, so that parts the demo shares between scenarios become parts of their own.
  const document = JSON.parse(JSON.stringify(DEMO_PLAN)) as Loose;
  edit(document);
  return document;
}

/** A document in which a test may set anything anywhere. */
// biome-ignore lint/suspicious/noExplicitAny: bad documents are the point of these tests
export type Loose = any;

export function textOf(document: Loose | Plan): string {
  return JSON.stringify(document);
}
