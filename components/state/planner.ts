import { wrapBoard } from '../../lib/io/engine-board.ts';
import { createEngineDesk, type EngineDesk } from '../../lib/io/engine-desk.ts';
import { fileNameFor, offerTextFile, readTextFile } from '../../lib/io/plan-file.ts';
import { createPlanKeeper, type PlanKeeper } from '../../lib/io/plan-keeper.ts';
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

function createPlanner() {
  const desk = createEngineDesk(wrapBoard);
  let state = initialState(desk);
  const listeners = new Set<() => void>();

  function set(change: Partial<PlannerState>): void {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  }

  function say(text: string, tone: 'plain' | 'bad' = 'plain'): void {
    set({ notice: { text, tone } });
  }

  const keeper: PlanKeeper = createPlanKeeper(openPlanStorage(), {
    onKept: () => set({ keeping: 'kept' }),
    onLoose: (words) => set({ keeping: 'loose', notice: { text: words, tone: 'bad' } }),
  });

  function keep(plan: Plan): void {
    if (state.keeping === 'loose') return;
    set({ keeping: 'writing' });
    keeper.keep(() => serialisePlan(plan));
  }

  function follow(): void {
    if (state.keeping !== 'starting') desk.follow(presentState(state.sheet).plan, state.currentId);
  }

  /** Takes up a new history: the figures follow, and the browser keeps the plan. */
  function adopt({ sheet, said, done }: Gesture, currentId = state.currentId): void {
    const { plan } = presentState(sheet);
    const changed = plan !== presentState(state.sheet).plan;
    const current = currentIn(plan, currentId);
    const selectedIds = current === state.currentId ? state.selectedIds : [current];
    set({ sheet, currentId: current, selectedIds, notice: { text: said, tone: done ? 'plain' : 'bad' } });
    follow();
    if (changed) keep(plan);
  }

  /** Begins with a plan: there is nothing before it to go back to. */
  function begin(plan: Plan, said: string): void {
    const currentId = firstLook(plan);
    set({ sheet: startSheet(plan), currentId, selectedIds: [currentId], notice: { text: said, tone: 'plain' } });
    follow();
  }

  async function start(): Promise<void> {
    const loaded = await keeper.load();
    if (loaded.kind === 'refused') set({ keeping: 'loose', notice: { text: loaded.words, tone: 'bad' } });
    else set({ keeping: 'kept' });
    const kept = loaded.kind === 'found' ? parsePlan(loaded.text) : null;
    if (kept?.ok) begin(kept.value, 'Your plan is as you left it.');
    else begin(DEMO_PLAN, loaded.kind === 'refused' ? loaded.words : WELCOME);
    if (kept && !kept.ok) say('The kept plan could not be read, so the invented shop is shown instead.', 'bad');
  }

  async function openFile(file: File): Promise<void> {
    const parsed = parsePlan(await readTextFile(file));
    if (!parsed.ok) {
      set({ openFailure: { fileName: file.name, lines: planFileWords(parsed.error) } });
      return;
    }
    const { value: plan } = parsed;
    const said = `${plan.name} is open. Undo brings back what was open before.`;
    adopt(replacePlan(state.sheet, plan, `open ${plan.name}`, said), firstLook(plan));
  }

  function saveFile(): void {
    const { plan, rejected } = presentState(state.sheet);
    const name = fileNameFor(plan.name);
    offerTextFile(name, serialisePlan(plan));
    const left = rejected.length > 0 ? ' Marked entries are not in it.' : '';
    say(`Saved as ${name}.${left}`);
  }

  desk.subscribe(() => set({ desk: desk.snapshot() }));

  return {
    getState: () => state,
    subscribe: (listener: () => void) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    start,
    openFile,
    saveFile,
    say,
    command: (command: Command, said: string) => adopt(performCommand(state.sheet, command, said)),
    rowGesture: ({ command, said, goTo }: RowGesture) => {
      const gesture = performCommand(state.sheet, command, said);
      adopt(gesture, gesture.done ? goTo : state.currentId);
    },
    enter: (applied: AppliedEntries) => adopt(performEntries(state.sheet, applied)),
    undo: () => adopt(undoGesture(state.sheet)),
    redo: () => adopt(redoGesture(state.sheet)),
    lookAt: (currentId: string, selectedIds: readonly string[] = [currentId]) => {
      const isSame = currentId === state.currentId && selectedIds.join() === state.selectedIds.join();
      if (isSame) return;
      set({ currentId, selectedIds });
      follow();
    },
    restart: () => {
      const said = 'The invented shop is open again. Undo brings your plan back.';
      adopt(replacePlan(state.sheet, { ...DEMO_PLAN }, 'start again', said), firstLook(DEMO_PLAN));
    },
    closeOpenFailure: () => set({ openFailure: null }),
  };
}

export type Planner = ReturnType<typeof createPlanner>;

let planner: Planner | null = null;

/** The one planner of the page; it is made, and begins to work, when it is first asked for. */
export function getPlanner(): Planner {
  if (!planner) {
    planner = createPlanner();
    void planner.start();
  }
  return planner;
}
