import { type KeptPlan, PlanKeeper } from '../../lib/io/plan-keeper.ts';
import { duplicateKept, renameKept, withFreeName } from '../../lib/io/plan-list.ts';
import { openPlanStorage, type PlanContent } from '../../lib/io/plan-storage.ts';
import { openTabChannel } from '../../lib/io/tab-channel.ts';
import { copyIdentity } from '../../lib/plan/commands/fresh-id.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { Result } from '../../lib/result.ts';
import { planFileWords } from '../../lib/views/plan-file-words.ts';
import { readLook, type SheetLook, USUAL_LOOK, writeLook } from '../../lib/views/sheet-look.ts';
import { readWaiting, type Waiting, withDraft } from '../../lib/views/waiting-entries.ts';
import type { PlannerState } from './planner-state.ts';

/** What the shelf needs of the one who holds the plan that is open. */
export interface PlanHolder {
  readonly state: () => PlannerState;
  readonly set: (change: Partial<PlannerState>) => void;
  readonly say: (text: string, tone?: 'plain' | 'bad') => void;
  /** The open plan as it is to be kept. */
  readonly content: () => PlanContent;
  /** Begins with a plan: there is nothing before it to go back to. */
  readonly begin: (plan: Plan, said: string, waiting?: Waiting) => void;
  /** Takes up what another tab has made of the open plan. */
  readonly follow: (plan: Plan, waiting: Waiting) => void;
  /** Gives the open plan another name. */
  readonly rename: (name: string, said: string) => void;
}

const NOT_KEPT = 'This plan is not kept in the browser. Save it as a file first.';

/** The plans kept in this browser: opens, renames, copies and deletes them, and keeps the one that is open. */
export class PlanShelf {
  readonly #storage = openPlanStorage();
  readonly #holder: PlanHolder;
  readonly #keeper: PlanKeeper;

  constructor(holder: PlanHolder) {
    this.#holder = holder;
    this.#keeper = new PlanKeeper(this.#storage, openTabChannel(), {
      onKept: () => holder.set({ keeping: 'kept', planId: this.#keeper.openId() }),
      onLoose: (words) => this.#loosen(words),
      onOutside: (content) => this.#followOutside(content),
      onBranched: () => void this.#branch(),
    });
  }

  /** The plan that was open here last; null when there is none that can be read. */
  async start(): Promise<KeptPlan> {
    const kept = await this.#keeper.start();
    const look = await this.#look(this.#keeper.openId());
    const keeping = kept.kind === 'refused' ? 'loose' : 'kept';
    this.#holder.set({ keeping, planId: this.#keeper.openId(), look });
    return kept;
  }

  /** Keeps the open plan soon. @param isQuiet nothing of it is shown, as while typing */
  keep(isQuiet = false): void {
    if (!isQuiet && this.#holder.state().keeping === 'kept') this.#holder.set({ keeping: 'writing' });
    const { content } = this.#holder;
    this.#keeper.keep(content);
  }

  /** Opens a plan as one of its own; the one that was open stays in the list. False when the open one is not kept. */
  async openNew(plan: Plan, said: string): Promise<boolean> {
    await this.#keeper.flush();
    if (this.#holder.state().keeping === 'loose') return false;
    const named = await withFreeName(this.#storage, plan);
    await this.#keeper.begin();
    this.#holder.begin(named, said);
    this.#holder.set({ planId: this.#keeper.openId(), look: USUAL_LOOK });
    this.keep();
    return true;
  }

  /** Goes on beside a kept plan that cannot be read, which stays as it is. */
  async startAside(): Promise<void> {
    await this.#keeper.begin();
    this.#holder.set({ planId: this.#keeper.openId() });
  }

  /** Looks up which plans are kept. */
  async list(): Promise<void> {
    await this.#keeper.flush();
    const cards = await this.#storage.list();
    this.#holder.set({ cards: cards.ok ? cards.value : [] });
  }

  /** Opens a kept plan in the place of the open one, which stays in the list. */
  async open(id: string): Promise<void> {
    await this.#keeper.flush();
    const loaded = await this.#storage.load(id);
    if (this.#holder.state().keeping === 'loose') return this.#holder.say(NOT_KEPT, 'bad');
    if (!loaded.ok || !loaded.value) return this.#holder.say('This plan is no longer kept.', 'bad');
    const plan = parsePlan(loaded.value.text);
    if (!plan.ok) {
      this.#holder.set({ openFailure: { fileName: loaded.value.name, lines: planFileWords(plan.error) } });
      return;
    }
    const look = await this.#look(id);
    const opened = await this.#keeper.open(id);
    if (opened.kind === 'found') this.#holder.set({ look });
    if (opened.kind === 'found') this.#begin(plan.value, opened.content, `${plan.value.name} is open.`);
  }

  async rename(id: string, name: string): Promise<void> {
    if (id === this.#keeper.openId()) this.#holder.rename(name, `The plan is called ${name}.`);
    else this.#tell(await renameKept(this.#storage, id, name), `The plan is called ${name}.`);
    await this.list();
  }

  async duplicate(id: string): Promise<void> {
    await this.#keeper.flush();
    this.#tell(await duplicateKept(this.#storage, id), 'The copy is in the list.');
    await this.list();
  }

  /** Deletes a kept plan for good; the open one cannot be deleted. */
  async remove(id: string): Promise<void> {
    if (id === this.#keeper.openId()) return;
    this.#tell(await this.#storage.remove(id), 'The plan is deleted.');
    await this.list();
  }

  /** Remembers how the open plan is looked at, where the browser keeps anything. */
  keepLook(look: SheetLook): void {
    void this.#storage.saveLook(this.#keeper.openId(), writeLook(look));
  }

  async #look(id: string): Promise<SheetLook> {
    const kept = await this.#storage.loadLook(id);
    return kept.ok && kept.value !== null ? readLook(kept.value) : USUAL_LOOK;
  }

  #begin(plan: Plan, content: PlanContent, said: string): void {
    this.#holder.begin(plan, said, withDraft(readWaiting(content.waiting), content.draft));
    this.#holder.set({ planId: this.#keeper.openId(), keeping: 'kept' });
  }

  #tell(outcome: Result<unknown, string>, said: string): void {
    if (outcome.ok) this.#holder.say(said);
    else this.#holder.say(outcome.error, 'bad');
  }

  /** Said once, until the plan is kept again. */
  #loosen(words: string): void {
    if (this.#holder.state().keeping !== 'loose') this.#holder.say(words, 'bad');
    this.#holder.set({ keeping: 'loose' });
  }

  #followOutside(content: PlanContent): void {
    const plan = parsePlan(content.text);
    if (plan.ok) this.#holder.follow(plan.value, readWaiting(content.waiting));
  }

  /** Another tab was first to write: what is here goes on as a plan of its own, under a name of its own. */
  async #branch(): Promise<void> {
    const { name } = this.#holder.content();
    const cards = await this.#storage.list();
    const others = cards.ok ? cards.value : [];
    const free = copyIdentity(others, { id: '', name }).name;
    this.#holder.set({ planId: this.#keeper.openId() });
    this.keepLook(this.#holder.state().look);
    this.#holder.rename(
      free,
      `Another tab changed this plan at the same time. Yours goes on as ${free}; both are kept.`,
    );
  }
}
