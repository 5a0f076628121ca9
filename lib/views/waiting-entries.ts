import type { MisreadField, RejectedEntry, SheetState } from './sheet-state.ts';

/** The entries that wait to be mended beside a plan. */
export type Waiting = Omit<SheetState, 'plan'>;

/** Beyond this many of a kind the rest is left out, so that a tampered store cannot slow the page down. */
const MOST = 2000;

const ENTRY_KEYS = ['scenarioId', 'columnId', 'text', 'problem', 'remedy'] as const;
const FIELD_KEYS = ['place', 'text', 'problem', 'remedy'] as const;

/** The items of a list that have text under every key, with those keys alone. */
function textsIn<Key extends string>(list: unknown, keys: readonly Key[]): Record<Key, string>[] {
  const items = Array.isArray(list) ? list.slice(0, MOST) : [];
  return items.flatMap((item: unknown) => {
    const texts = keys.map((key) => [key, (item as Record<string, unknown> | null)?.[key]] as const);
    return texts.every(([, text]) => typeof text === 'string') ? [Object.fromEntries(texts)] : [];
  }) as Record<Key, string>[];
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** What waits, as text to be kept beside the plan. */
export function writeWaiting({ rejected, misread }: Waiting): string {
  return JSON.stringify({ rejected, misread });
}

/** What waited beside a kept plan; whatever cannot be read is left out. */
export function readWaiting(text: string): Waiting {
  const kept = parsed(text) as { readonly rejected?: unknown; readonly misread?: unknown } | null;
  const rejected: RejectedEntry[] = textsIn(kept?.rejected, ENTRY_KEYS);
  const misread: MisreadField[] = textsIn(kept?.misread, FIELD_KEYS);
  return { rejected, misread };
}

const ENTRY_DRAFT_KEYS = ['scenarioId', 'columnId', 'text'] as const;
const FIELD_DRAFT_KEYS = ['place', 'text'] as const;

type EntryDraft = Pick<RejectedEntry, (typeof ENTRY_DRAFT_KEYS)[number]>;
type FieldDraft = Pick<MisreadField, (typeof FIELD_DRAFT_KEYS)[number]>;

/** A text being typed into a cell of the scenarios or of a catalogue. */
export type Draft = EntryDraft | FieldDraft;

/** A text being typed, as text to be kept beside the plan; empty for none. */
export function writeDraft(draft: Draft | null): string {
  return draft ? JSON.stringify(draft) : '';
}

const FOUND = {
  problem: 'This was being typed when the page was left.',
  remedy: 'Enter takes it up, Esc drops it.',
} as const;

function withEntry({ rejected, misread }: Waiting, draft: EntryDraft): Waiting {
  const others = rejected.filter((entry) => entry.scenarioId !== draft.scenarioId || entry.columnId !== draft.columnId);
  return { misread, rejected: [...others, { ...draft, ...FOUND }] };
}

function withField({ rejected, misread }: Waiting, draft: FieldDraft): Waiting {
  const others = misread.filter((field) => field.place !== draft.place);
  return { rejected, misread: [...others, { ...draft, ...FOUND }] };
}

/** What waited, and with it a text that was being typed when the page was left: that one waits in its cell as well. */
export function withDraft(waiting: Waiting, text: string): Waiting {
  const kept = [parsed(text)];
  const [entry] = textsIn(kept, ENTRY_DRAFT_KEYS);
  if (entry) return withEntry(waiting, entry);
  const [field] = textsIn(kept, FIELD_DRAFT_KEYS);
  return field ? withField(waiting, field) : waiting;
}
