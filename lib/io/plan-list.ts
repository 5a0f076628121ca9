import { copyIdentity } from '../plan/commands/fresh-id.ts';
import { parsePlan } from '../plan/parse-plan.ts';
import type { Plan } from '../plan/plan-types.ts';
import { serialisePlan } from '../plan/serialise-plan.ts';
import { fail, type Result, succeed } from '../result.ts';
import { newPlanId } from './open-plan-id.ts';
import type { KeptContent, PlanStorage } from './plan-storage.ts';

/** What is changed in the list of kept plans, or in words why it could not be. */
type Listed<Value> = Promise<Result<Value, string>>;

const UNREADABLE = 'This plan cannot be read any more, so it was left as it is.';
const CHANGED = 'Another tab has just changed this plan. Try once more.';

async function contentOf(storage: PlanStorage, id: string): Listed<KeptContent> {
  const loaded = await storage.load(id);
  if (!loaded.ok) return loaded;
  return loaded.value ? succeed(loaded.value) : fail('This plan is no longer kept.');
}

function renamed(content: KeptContent, name: string): Result<KeptContent, string> {
  const plan = parsePlan(content.text);
  if (!plan.ok) return fail(UNREADABLE);
  return succeed({ ...content, name, text: serialisePlan({ ...plan.value, name }) });
}

async function write(storage: PlanStorage, id: string, content: KeptContent): Listed<string> {
  const { revision, ...kept } = content;
  const saved = await storage.save(id, kept, revision);
  if (saved.kind === 'saved') return succeed(id);
  return fail(saved.kind === 'conflict' ? CHANGED : saved.message);
}

/** Gives a kept plan that is not open here another name. The name must not be blank. */
export async function renameKept(storage: PlanStorage, id: string, name: string): Listed<string> {
  const content = await contentOf(storage, id);
  if (!content.ok) return content;
  const changed = renamed(content.value, name);
  return changed.ok ? write(storage, id, changed.value) : changed;
}

/** Keeps a copy of a kept plan under a name of its own; the value is the id of the copy. */
export async function duplicateKept(storage: PlanStorage, id: string): Listed<string> {
  const [content, cards] = [await contentOf(storage, id), await storage.list()];
  if (!content.ok) return content;
  const copy = copyIdentity(cards.ok ? cards.value : [], { id, name: content.value.name });
  const changed = renamed(content.value, copy.name);
  return changed.ok ? write(storage, newPlanId(), { ...changed.value, revision: 0 }) : changed;
}

/** The plan under a name that no kept plan has: its own, or that with a number after it. */
export async function withFreeName(storage: PlanStorage, plan: Plan): Promise<Plan> {
  const cards = await storage.list();
  const taken = cards.ok ? cards.value : [];
  if (!taken.some((card) => card.name === plan.name)) return plan;
  return { ...plan, name: copyIdentity(taken, { id: '', name: plan.name }).name };
}
