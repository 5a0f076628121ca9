import type { LoadOutcome, PlanStorage, SaveOutcome } from './plan-storage.ts';

export type KeptPlan =
  | { readonly kind: 'found'; readonly text: string }
  | { readonly kind: 'empty' }
  | { readonly kind: 'refused'; readonly words: string };

export interface PlanKeeper {
  readonly load: () => Promise<KeptPlan>;
  /** Keeps a plan soon; of several in quick succession only the last is written. */
  readonly keep: (text: () => string) => void;
}

export interface KeeperReport {
  /** Told when the latest plan has been written. */
  readonly onKept: () => void;
  /** Told in words when the plan is no longer kept. */
  readonly onLoose: (words: string) => void;
}

/** How long a plan must rest before it is written [ms]. */
const REST = 400;

function refusedWords(message: string): string {
  return `This browser does not keep the plan (${message}). Save it as a file before you leave.`;
}

const CONFLICT_WORDS =
  'Another tab has changed the kept plan, so this tab no longer writes it. Save this one as a file, or reload to see the other.';

function keptPlan(outcome: LoadOutcome): KeptPlan {
  return outcome.kind === 'refused' ? { kind: 'refused', words: refusedWords(outcome.message) } : outcome;
}

/**
 * Writes the plan as it is edited. After a refusal, or when another tab has written, it stops for good and says so once.
 */
export function createPlanKeeper(storage: PlanStorage, { onKept, onLoose }: KeeperReport): PlanKeeper {
  let revision = 0;
  let loose = false;
  let latest: (() => string) | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let writing: Promise<void> = Promise.resolve();

  function take(outcome: SaveOutcome): void {
    if (outcome.kind === 'saved') {
      revision = outcome.revision;
      if (latest === null) onKept();
      return;
    }
    loose = true;
    onLoose(outcome.kind === 'conflict' ? CONFLICT_WORDS : refusedWords(outcome.message));
  }

  async function write(): Promise<void> {
    const text = latest;
    latest = null;
    if (text && !loose) take(await storage.save(text(), revision));
  }

  function flush(): void {
    clearTimeout(timer);
    writing = writing.then(write);
  }

  async function load(): Promise<KeptPlan> {
    const outcome = await storage.load();
    if (outcome.kind === 'found') revision = outcome.revision;
    if (outcome.kind === 'refused') loose = true;
    return keptPlan(outcome);
  }

  function keep(text: () => string): void {
    latest = text;
    clearTimeout(timer);
    timer = setTimeout(flush, REST);
  }

  // A page that is being left may have a plan that has not rested yet.
  globalThis.document?.addEventListener('visibilitychange', flush);

  return { load, keep };
}
