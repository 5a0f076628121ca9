import { engineBoard } from '../../lib/io/engine-board.ts';
import { EngineDesk } from '../../lib/io/engine-desk.ts';
import { fileNameFor, offerTextFile, readTextFile } from '../../lib/io/plan-file.ts';
import { createPlanKeeper } from '../../lib/io/plan-keeper.ts';
import { openPlanStorage } from '../../lib/io/plan-storage.ts';
import type { Command } from '../../lib/plan/commands/command.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import type { AppliedEntries } from '../../lib/views/apply-entries.ts';
import { firstLook } from '../../lib/views/first-look.ts';
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
import type { PlannerState } from './planner-state.ts';

const WELCOME = 'This is an invented shop to try things on. Change any entry; the figures follow.';

function initialState(desk: EngineDesk): PlannerState {
  return {
    sheet: startSheet(DEMO_PLAN),
    currentId: DEMO_PLAN.scenarios[0]?.id ?? '',
    selectedIds: [],
    notice: { text: 'Looking for a plan kept in this browser …', tone: 'plain' },
    desk: desk.snapshot(),
    keeping: 'starting',
    openFailure: null,
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
  readonly #keeper = createPlanKeeper(openPlanStorage(), {
    onKept: () => this.#set({ keeping: 'kept' }),
    onLoose: (words) => this.#set({ keeping: 'loose', notice: { text: words, tone: 'bad' } }),
  });
  #state = initialState(this.#desk);

  constructor() {
    this.#desk.subscribe(() => this.#set({ desk: this.#desk.snapshot() }));
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
    const said = 'The invented shop is open again. Undo brings your plan back.';
    const gesture = replacePlan(this.#state.sheet, { ...DEMO_PLAN }, 'start again', said);
    this.#adopt(gesture, firstLook(DEMO_PLAN));
  };

  readonly saveFile = (): void => {
    const { plan, rejected, misread } = presentState(this.#state.sheet);
    const name = fileNameFor(plan.name);
    offerTextFile(name, serialisePlan(plan));
    const left = rejected.length + misread.length > 0 ? ' Marked entries are not in it.' : '';
    this.say(`Saved as ${name}.${left}`);
  };

  readonly closeOpenFailure = (): void => this.#set({ openFailure: null });

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
    this.#set({ currentId, selectedIds });
    this.#follow();
  }

  async openFile(file: File): Promise<void> {
    const parsed = parsePlan(await readTextFile(file));
    if (!parsed.ok) {
      this.#set({ openFailure: { fileName: file.name, lines: planFileWords(parsed.error) } });
      return;
    }
    const { value: plan } = parsed;
    const said = `${plan.name} is open. Undo brings back what was open before.`;
    this.#adopt(replacePlan(this.#state.sheet, plan, `open ${plan.name}`, said), firstLook(plan));
  }

  async #start(): Promise<void> {
    const loaded = await this.#keeper.load();
    this.#set({ keeping: loaded.kind === 'refused' ? 'loose' : 'kept' });
    const kept = loaded.kind === 'found' ? parsePlan(loaded.text) : null;
    if (kept?.ok) this.#begin(kept.value, 'Your plan is as you left it.');
    else this.#begin(DEMO_PLAN, loaded.kind === 'refused' ? loaded.words : WELCOME);
    if (loaded.kind === 'refused') this.say(loaded.words, 'bad');
    if (kept && !kept.ok) this.say('The kept plan could not be read, so the invented shop is shown instead.', 'bad');
  }

  /** Begins with a plan: there is nothing before it to go back to. */
  #begin(plan: Plan, said: string): void {
    const currentId = firstLook(plan);
    this.#set({ sheet: startSheet(plan), currentId, selectedIds: [currentId], notice: { text: said, tone: 'plain' } });
    this.#follow();
  }

  /** Takes up a new history: the figures follow, and the browser keeps the plan. */
  #adopt({ sheet, said, done }: Gesture, wantedId = this.#state.currentId): void {
    const { plan } = presentState(sheet);
    const changed = plan !== presentState(this.#state.sheet).plan;
    const currentId = currentIn(plan, wantedId);
    const selectedIds = currentId === this.#state.currentId ? this.#state.selectedIds : [currentId];
    this.#set({ sheet, currentId, selectedIds, notice: { text: said, tone: done ? 'plain' : 'bad' } });
    this.#follow();
    if (changed) this.#keep(plan);
  }

  #keep(plan: Plan): void {
    if (this.#state.keeping === 'loose') return;
    this.#set({ keeping: 'writing' });
    this.#keeper.keep(() => serialisePlan(plan));
  }

  #follow(): void {
    if (this.#state.keeping !== 'starting')
      this.#desk.follow(presentState(this.#state.sheet).plan, this.#state.currentId);
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
