import { engineBoard } from '../../lib/io/engine-board.ts';
import { EngineDesk, type Foreseen } from '../../lib/io/engine-desk.ts';
import { gathered } from '../../lib/io/gathered.ts';
import { addressWith, onLinkFragment, takeLinkFragment } from '../../lib/io/page-address.ts';
import { fileNameFor, offerTextFile, readPlanFile } from '../../lib/io/plan-file.ts';
import { planFragment, planInFragment } from '../../lib/io/plan-link.ts';
import type { PlanContent } from '../../lib/io/plan-storage.ts';
import type { Command } from '../../lib/plan/commands/command.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { PlanLinkFault } from '../../lib/plan/plan-link-fault.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { type Result, succeed } from '../../lib/result.ts';
import type { AppliedEntries } from '../../lib/views/apply-entries.ts';
import { firstLook } from '../../lib/views/first-look.ts';
import { linkWords } from '../../lib/views/link-words.ts';
import { planFileWords } from '../../lib/views/plan-file-words.ts';
import type { RowGesture } from '../../lib/views/row-gestures.ts';
import {
  type Gesture,
  performCommand,
  performEntries,
  presentState,
  redoGesture,
  replacePlan,
  type SheetHistory,
  startSheet,
  undoGesture,
} from '../../lib/views/sheet-history.ts';
import { type SheetLook, USUAL_LOOK } from '../../lib/views/sheet-look.ts';
import {
  type Draft,
  readWaiting,
  type Waiting,
  withDraft,
  writeDraft,
  writeWaiting,
} from '../../lib/views/waiting-entries.ts';
import { PlanShelf } from './plan-shelf.ts';
import type { PlannerState } from './planner-state.ts';

const WELCOME = 'This is an invented shop to try things on. Change any entry; the figures follow.';

const UNREADABLE =
  'The plan you had open cannot be read, so it is left as it is in the list of plans, and the invented shop is shown.';

function waitingIn(content: PlanContent): Waiting {
  return withDraft(readWaiting(content.waiting), content.draft);
}

function initialState(desk: EngineDesk): PlannerState {
  return {
    sheet: startSheet(DEMO_PLAN),
    currentId: DEMO_PLAN.scenarios[0]?.id ?? '',
    selectedIds: [],
    notice: { text: 'Looking for a plan kept in this browser …', tone: 'plain' },
    desk: desk.snapshot(),
    keeping: 'starting',
    openFailure: null,
    planId: '',
    cards: [],
    look: USUAL_LOOK,
    linked: null,
  };
}

/** The scenario to look at: the one that was looked at, or the first row when it is gone. */
function currentIn(plan: Plan, id: string): string {
  return plan.scenarios.some((scenario) => scenario.id === id) ? id : (plan.scenarios[0]?.id ?? '');
}

/** The one who knows the plan and all that is told of it; the page only asks and shows. */
export class Planner {
  readonly #desk = new EngineDesk(engineBoard);
  readonly #listeners = new Set<() => void>();
  readonly shelf = new PlanShelf({
    state: () => this.#state,
    set: (change) => this.#set(change),
    say: (text, tone) => this.say(text, tone),
    content: () => this.#content(),
    begin: (plan, said, waiting) => this.#begin(plan, said, waiting),
    follow: (plan, waiting) => this.#followOutside(plan, waiting),
    rename: (name, said) => this.command({ kind: 'setValues', changes: [{ path: 'name', value: name }] }, said),
  });
  #state = initialState(this.#desk);
  #draft: Draft | null = null;
  /** The text of the plan that was serialised last, as long as that plan is the open one. */
  #written: { readonly plan: Plan; readonly text: string } | null = null;

  constructor() {
    // Answers may come many to a frame; each would have the page drawn again.
    this.#desk.subscribe(gathered(() => this.#set({ desk: this.#desk.snapshot() })));
    onLinkFragment((fragment) => void this.#openLink(fragment));
    void this.#start();
  }

  readonly getState = (): PlannerState => this.#state;

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly undo = (): void => this.#adopt(undoGesture(this.#state.sheet));

  readonly redo = (): void => this.#adopt(redoGesture(this.#state.sheet));

  readonly restart = (): void => {
    void this.openNew(
      { ...DEMO_PLAN },
      'The invented shop is open as a plan of its own. Yours is in the list of plans.',
    );
  };

  readonly saveFile = (): void => {
    const { plan, rejected, misread } = presentState(this.#state.sheet);
    const name = fileNameFor(plan.name);
    offerTextFile(name, serialisePlan(plan));
    const left = rejected.length + misread.length > 0 ? ' Marked entries are not in it.' : '';
    this.say(`Saved as ${name}.${left}`);
  };

  /** Stops the engine; the figures worked out last stay, grey. */
  readonly stopWork = (): void => this.#desk.stop();

  readonly goOnWorking = (): void => this.#desk.goOn();

  readonly closeOpenFailure = (): void => this.#set({ openFailure: null });

  /** Opens the plan that a link has brought as one of its own. */
  readonly takeLinked = (): void => {
    const { linked } = this.#state;
    this.#set({ linked: null });
    if (linked) void this.openNew(linked, `${linked.name} is open. What was open before is in the list of plans.`);
  };

  readonly dropLinked = (): void => this.#set({ linked: null });

  /** The address that carries the open plan. */
  async shareAddress(): Promise<Result<string, PlanLinkFault>> {
    const fragment = await planFragment(presentState(this.#state.sheet).plan);
    return fragment.ok ? succeed(addressWith(fragment.value)) : fragment;
  }

  /** Opens a plan beside the kept ones; where the browser keeps none, in the place of the open one, and undo brings that back. */
  async openNew(plan: Plan, said: string): Promise<void> {
    if (await this.shelf.openNew(plan, said)) return;
    const words = `${plan.name} is open. Undo brings back what was open before.`;
    this.#adopt(replacePlan(this.#state.sheet, plan, `open ${plan.name}`, words), firstLook(plan));
  }

  /** Looks at the sheet in another way; it is remembered, and undo does not touch it. */
  readonly setLook = (look: SheetLook): void => {
    if (look === this.#state.look) return;
    this.#set({ look });
    this.shelf.keepLook(look);
  };

  /** Told what is being typed into a cell, so that it outlives the page; null when typing ends. */
  readonly typing = (draft: Draft | null): void => {
    if (draft === this.#draft) return;
    this.#draft = draft;
    this.shelf.keep(true);
  };

  /** Works out scenarios as they would be if what is being typed, or could be chosen, were taken up; none when that has ended. @param isGuess it may wait until hands rest */
  foresee(next: readonly Foreseen[], isGuess = false): void {
    this.#desk.foresee(next, isGuess);
  }

  say(text: string, tone: 'plain' | 'bad' = 'plain'): void {
    this.#set({ notice: { text, tone } });
  }

  command(command: Command, said: string): void {
    this.#adopt(performCommand(this.#state.sheet, command, said));
  }

  rowGesture({ command, said, goTo }: RowGesture): void {
    const gesture = performCommand(this.#state.sheet, command, said);
    this.#adopt(gesture, gesture.done ? goTo : this.#state.currentId);
  }

  /** Any gesture that is a pure function of the history; true when all of it was done. */
  perform(gesture: (sheet: SheetHistory) => Gesture): boolean {
    const outcome = gesture(this.#state.sheet);
    this.#adopt(outcome);
    return outcome.done;
  }

  enter(applied: AppliedEntries): void {
    this.#adopt(performEntries(this.#state.sheet, applied));
  }

  lookAt(currentId: string, selectedIds: readonly string[] = [currentId]): void {
    const isSame = currentId === this.#state.currentId && selectedIds.join() === this.#state.selectedIds.join();
    if (isSame) return;
    this.#desk.attend();
    this.#set({ currentId, selectedIds });
    this.#follow();
  }

  async openFile(file: File): Promise<void> {
    const parsed = await readPlanFile(file);
    if (!parsed.ok) {
      this.#set({ openFailure: { fileName: file.name, lines: planFileWords(parsed.error) } });
      return;
    }
    await this.openNew(parsed.value, `${parsed.value.name} is open. What was open before is in the list of plans.`);
  }

  async #start(): Promise<void> {
    const loaded = await this.shelf.start();
    const kept = loaded.kind === 'found' ? parsePlan(loaded.content.text) : null;
    if (loaded.kind === 'found' && kept?.ok) {
      this.#begin(kept.value, 'Your plan is as you left it.', waitingIn(loaded.content));
    } else {
      if (kept) await this.shelf.startAside();
      this.#begin(DEMO_PLAN, WELCOME);
    }
    if (loaded.kind === 'refused') this.say(loaded.words, 'bad');
    if (kept && !kept.ok) this.say(UNREADABLE, 'bad');
    const fragment = takeLinkFragment();
    if (fragment) await this.#openLink(fragment);
  }

  async #openLink(fragment: string): Promise<void> {
    const plan = await planInFragment(fragment);
    if (plan.ok) this.#set({ linked: plan.value });
    else this.#set({ openFailure: { fileName: 'The link', lines: linkWords(plan.error) } });
  }

  /** Begins with a plan: there is nothing before it to go back to. */
  #begin(plan: Plan, said: string, waiting?: Waiting): void {
    const currentId = firstLook(plan);
    this.#draft = null;
    const sheet = startSheet(plan, waiting);
    this.#set({ sheet, currentId, selectedIds: [currentId], notice: { text: said, tone: 'plain' } });
    this.#follow();
  }

  /** Takes up what another tab has made of this plan, as a step that can be undone. */
  #followOutside(plan: Plan, waiting: Waiting): void {
    const state = presentState(this.#state.sheet);
    if (this.#text(state.plan) === serialisePlan(plan) && writeWaiting(state) === writeWaiting(waiting)) return;
    const said = 'Another tab has changed this plan; this one follows.';
    const gesture = replacePlan(this.#state.sheet, plan, 'change in another tab', said, waiting);
    this.#show(gesture, this.#state.currentId);
  }

  #text(plan: Plan): string {
    if (this.#written?.plan !== plan) this.#written = { plan, text: serialisePlan(plan) };
    return this.#written.text;
  }

  #content(): PlanContent {
    const state = presentState(this.#state.sheet);
    const { plan } = state;
    return { name: plan.name, text: this.#text(plan), waiting: writeWaiting(state), draft: writeDraft(this.#draft) };
  }

  /** Takes up a new history: the figures follow, and the browser keeps the plan. */
  #adopt(gesture: Gesture, wantedId = this.#state.currentId): void {
    const changed = presentState(gesture.sheet).plan !== presentState(this.#state.sheet).plan;
    this.#desk.attend();
    this.#show(gesture, wantedId);
    if (changed) this.shelf.keep();
  }

  #show({ sheet, said, done }: Gesture, wantedId: string): void {
    const currentId = currentIn(presentState(sheet).plan, wantedId);
    const selectedIds = currentId === this.#state.currentId ? this.#state.selectedIds : [currentId];
    this.#set({ sheet, currentId, selectedIds, notice: { text: said, tone: done ? 'plain' : 'bad' } });
    this.#follow();
  }

  #follow(): void {
    if (this.#state.keeping === 'starting') return;
    this.#desk.follow(presentState(this.#state.sheet).plan, this.#state.currentId);
    const desk = this.#desk.snapshot();
    if (desk !== this.#state.desk) this.#set({ desk });
  }

  #set(change: Partial<PlannerState>): void {
    this.#state = { ...this.#state, ...change };
    for (const listener of this.#listeners) listener();
  }
}

let planner: Planner | null = null;

/** The one planner of the page; it is made, and begins to work, when it is first asked for. */
export function getPlanner(): Planner {
  planner ??= new Planner();
  return planner;
}
