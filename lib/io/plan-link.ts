import { LIMITS } from '../plan/limits.ts';
import { parsePlan } from '../plan/parse-plan.ts';
import type { PlanLinkFault } from '../plan/plan-link-fault.ts';
import type { Plan } from '../plan/plan-types.ts';
import { serialisePlan } from '../plan/serialise-plan.ts';
import { fail, type Result, succeed } from '../result.ts';
import { fromBase64Url, toBase64Url } from './base64-url.ts';
import { deflateText, inflateText } from './deflate-text.ts';

/** What stands before the plan in the part of an address that browsers never send: `#plan=1.` and the form's number. */
const MARK = 'plan=';
const FORM = '1.';

/** The longest plan part that a link may have [characters]; browsers and chat programs cut longer addresses. */
const LONGEST_LINK = 60_000;

/** True when an address' fragment, with its #, carries a plan. */
export function carriesPlan(hash: string): boolean {
  return hash.startsWith(`#${MARK}`);
}

/** The text of a plan without the spaces that make a file readable. */
function compactText(plan: Plan): string {
  return JSON.stringify(JSON.parse(serialisePlan(plan)));
}

/** The fragment, with its #, that carries a plan; fails when it would be longer than a link may be. */
export async function planFragment(plan: Plan): Promise<Result<string, PlanLinkFault>> {
  const packed = toBase64Url(await deflateText(compactText(plan)));
  if (packed.length > LONGEST_LINK) return fail({ kind: 'tooLong', characters: packed.length, limit: LONGEST_LINK });
  return succeed(`#${MARK}${FORM}${packed}`);
}

/** The plan that a fragment carries, or why there is none. Never throws, whatever the fragment. */
export async function planInFragment(hash: string): Promise<Result<Plan, PlanLinkFault>> {
  const body = hash.slice(MARK.length + 1);
  if (!body.startsWith(FORM)) return fail({ kind: /^\d+\./.test(body) ? 'otherForm' : 'damaged' });
  const packed = body.slice(FORM.length);
  if (packed.length > LONGEST_LINK) return fail({ kind: 'tooLong', characters: packed.length, limit: LONGEST_LINK });
  const bytes = fromBase64Url(packed);
  if (!bytes.ok || packed === '') return fail({ kind: 'damaged' });
  const text = await inflateText(bytes.value, LIMITS.bytes);
  if (!text.ok) return fail(text.error === 'damaged' ? { kind: 'damaged' } : largeFile());
  const plan = parsePlan(text.value);
  return plan.ok ? plan : fail({ kind: 'file', error: plan.error });
}

function largeFile(): PlanLinkFault {
  return { kind: 'file', error: { kind: 'tooLarge', bytes: LIMITS.bytes, limit: LIMITS.bytes } };
}
