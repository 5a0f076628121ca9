import { newPlanId, openPlanId, rememberOpenPlan } from './open-plan-id.ts';
import type { Asked, KeptContent, PlanCard, PlanContent, PlanStorage } from './plan-storage.ts';
import type { TabChannel } from './tab-channel.ts';

export type KeptPlan =
  | { readonly kind: 'found'; readonly content: PlanContent }
  | { readonly kind: 'empty' }
  | { readonly kind: 'refused'; readonly words: string };

export interface KeeperReport {
  /** Told when the latest content has been written. */
  readonly onKept: () => void;
  /** Told in words why it could not be written. */
  readonly onLoose: (words: string) => void;
  /** Told when another tab has written the plan that is open here. */
  readonly onOutside: (content: PlanContent) => void;
  /** Told when another tab was first to write, so that this tab goes on with a plan of its own. */
  readonly onBranched: () => void;
}

/** How long a plan must rest before it is written [ms]. */
const REST = 300;
/** The longest an edit waits to be written while others follow it [ms]. */
const LONGEST_WAIT = 700;

/** Id of the plan of a browser that keeps none yet; the same in all its tabs, so that they keep one and not several. */
const FIRST_PLAN = 'first';

/** What is said when the browser does not keep the plan. */
export function refusedWords(message: string): string {
  return `This browser does not keep the plan (${message}). Save it as a file before you leave.`;
}

/** Writes the plan that is open as it is edited, and never over what another tab has written. */
export class PlanKeeper {
  readonly #storage: PlanStorage;
  readonly #channel: TabChannel;
  readonly #report: KeeperReport;
  #id = FIRST_PLAN;
  #revision = 0;
  #latest: (() => PlanContent) | null = null;
  #waitsSince: number | null = null;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #writing: Promise<void> = Promise.resolve();

  constructor(storage: PlanStorage, channel: TabChannel, report: KeeperReport) {
    this.#storage = storage;
    this.#channel = channel;
    this.#report = report;
    channel.listen((news) => void this.#hear(news.planId));
    // A page that is being left may have a plan that has not rested yet.
    globalThis.document?.addEventListener('visibilitychange', () => void this.flush());
  }

  /** Id of the plan that is open here. */
  openId(): string {
    return this.#id;
  }

  /** The plan this tab had open, or else the one worked on last. */
  async start(): Promise<KeptPlan> {
    const listed = await this.#storage.list();
    if (!listed.ok) return { kind: 'refused', words: refusedWords(listed.error) };
    const wanted = openPlanId();
    const card = listed.value.find(({ id }) => id === wanted) ?? listed.value[0];
    return card ? this.#load(card) : { kind: 'empty' };
  }

  /** Opens another kept plan, once what waits to be written of this one is written. */
  async open(id: string): Promise<KeptPlan> {
    const opened = await this.#load({ id });
    if (opened.kind === 'found') void this.#storage.touch(id);
    return opened;
  }

  /** Goes on with a plan of its own, which is written when it is first given to keep. */
  async begin(): Promise<void> {
    await this.#settled();
    this.#goOnAs(newPlanId(), 0);
  }

  /** Keeps the open plan soon; of several in quick succession only the last is written. */
  keep(content: () => PlanContent): void {
    this.#latest = content;
    this.#waitsSince ??= performance.now();
    const wait = Math.max(0, Math.min(REST, this.#waitsSince + LONGEST_WAIT - performance.now()));
    clearTimeout(this.#timer);
    this.#timer = setTimeout(() => void this.flush(), wait);
  }

  /** Resolves when nothing waits to be written any more. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    this.#writing = this.#writing.then(() => this.#write());
    return this.#writing;
  }

  /** Resolves when nothing of the open plan waits any more, even if it was edited meanwhile. */
  async #settled(): Promise<void> {
    do await this.flush();
    while (this.#latest);
  }

  #goOnAs(id: string, revision: number): void {
    this.#id = id;
    this.#revision = revision;
    rememberOpenPlan(id);
  }

  async #load({ id }: Pick<PlanCard, 'id'>): Promise<KeptPlan> {
    const loaded: Asked<KeptContent | null> = await this.#storage.load(id);
    if (!loaded.ok) return { kind: 'refused', words: refusedWords(loaded.error) };
    if (!loaded.value) return { kind: 'empty' };
    await this.#settled();
    this.#goOnAs(id, loaded.value.revision);
    return { kind: 'found', content: loaded.value };
  }

  async #write(): Promise<void> {
    const content = this.#latest;
    this.#latest = null;
    this.#waitsSince = null;
    if (!content) return;
    const outcome = await this.#storage.save(this.#id, content(), this.#revision);
    if (outcome.kind === 'saved') this.#goOnAs(this.#id, outcome.revision);
    if (outcome.kind === 'saved') this.#channel.tell({ planId: this.#id });
    if (outcome.kind === 'saved' && this.#latest === null) this.#report.onKept();
    // The next edit tries again: there may be room by then.
    if (outcome.kind === 'refused') this.#report.onLoose(refusedWords(outcome.message));
    if (outcome.kind === 'conflict') this.#branch(content);
  }

  #branch(content: () => PlanContent): void {
    this.#goOnAs(newPlanId(), 0);
    this.keep(this.#latest ?? content);
    this.#report.onBranched();
  }

  /** Another tab has written a plan; when it is this one and nothing of ours waits, we go on from what it wrote. */
  async #hear(planId: string): Promise<void> {
    if (planId !== this.#id) return;
    await this.#writing;
    const loaded = await this.#storage.load(planId);
    if (this.#latest || planId !== this.#id || !loaded.ok || !loaded.value) return;
    if (loaded.value.revision <= this.#revision) return;
    this.#revision = loaded.value.revision;
    this.#report.onOutside(loaded.value);
  }
}
