import {
  type ClipboardEvent,
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useMemo,
  useRef,
  useState,
} from 'react';
import { type CellPlace, type CellRange, clampRange, singleCell, stretchRange } from '../../lib/views/cell-range.ts';
import { applyFields, emptyFields, type FieldEntry } from '../../lib/views/fields/apply-fields.ts';
import type { FieldCell, FieldGrid } from '../../lib/views/fields/field-grid.ts';
import { type GridAction, gridAction } from '../../lib/views/fields/grid-keys.ts';
import {
  cellAt,
  cellsIn,
  filledFields,
  gridSize,
  gridText,
  pastedFields,
  rangeAfter,
} from '../../lib/views/fields/grid-range.ts';
import { performFields, presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';

/** What a cell asks of its grid. */
export interface GridHands {
  readonly press: (event: MouseEvent, at: CellPlace) => void;
  readonly drag: (event: MouseEvent, at: CellPlace) => void;
  readonly open: (at: CellPlace) => void;
  readonly typing: (cell: FieldCell, text: string) => void;
  readonly done: (cell: FieldCell, text: string, move: CellPlace | null) => void;
  readonly cancel: () => void;
}

/** The cell that is open, and the text it starts with. */
interface OpenCell extends CellPlace {
  readonly text: string | null;
}

interface GridState {
  readonly range: CellRange | null;
  readonly open: OpenCell | null;
}

const NOTHING: GridState = { range: null, open: null };

/** Takes up texts for fields; what cannot be read stays in its cell. */
function enter(entries: readonly FieldEntry[], leftOut = ''): void {
  getPlanner().perform((sheet) => {
    const applied = applyFields(presentState(sheet), entries);
    return performFields(sheet, { ...applied, said: `${applied.said}${leftOut}` });
  });
}

function empty(cells: readonly FieldCell[]): void {
  getPlanner().perform((sheet) => performFields(sheet, emptyFields(presentState(sheet), cells)));
}

function discard(cells: readonly FieldCell[]): void {
  const faulty = cells.filter((cell) => cell.fault);
  if (faulty.length > 0) empty(faulty);
}

function focusCell(table: HTMLTableElement | null, { row, column }: CellPlace): void {
  const cell = table?.querySelector<HTMLElement>(`[data-row="${row}"][data-column="${column}"]`);
  cell?.focus();
  // What is told of the cell may come to lie over it.
  requestAnimationFrame(() => cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' }));
}

/** A text being typed into a field. */
export type TypedField = Pick<FieldEntry, 'place' | 'text'>;

interface Told {
  /** The cell in focus, as the grid has it now. */
  readonly onFocus: (place: string | null) => void;
  /** What is being typed into which field; null when typing ends. */
  readonly onTyping: (typed: TypedField | null) => void;
}

/** A grid of fields worked by hand: which cells are selected, which is open, and what the gestures do. */
export class GridWorker {
  #state: GridState = NOTHING;
  grid: FieldGrid;
  told: Told;
  readonly #table: RefObject<HTMLTableElement | null>;
  readonly #onState: (state: GridState) => void;

  constructor(
    table: RefObject<HTMLTableElement | null>,
    grid: FieldGrid,
    told: Told,
    onState: (state: GridState) => void,
  ) {
    this.#table = table;
    this.grid = grid;
    this.told = told;
    this.#onState = onState;
  }

  readonly hands: GridHands = {
    press: (event, at) => {
      if (this.#isOpenAt(at)) return;
      const range = this.#state.range;
      if (event.shiftKey && range) this.select({ anchor: range.anchor, head: at });
      else this.select(singleCell(at));
      // The browser would put the focus there too, but would also begin to select text.
      event.preventDefault();
    },
    drag: (event, at) => {
      const { range, open } = this.#state;
      if (event.buttons === 1 && range && !open) this.select({ anchor: range.anchor, head: at });
    },
    open: (at) => this.#open(at, null),
    typing: ({ place }, text) => this.told.onTyping({ place, text }),
    done: (cell, text, move) => {
      const { open } = this.#state;
      this.#close();
      if (move && open) this.select(stretchRange(singleCell(open), move, gridSize(this.grid)), true);
      enter([{ place: cell.place, look: cell.look, owner: cell.owner, text }]);
    },
    cancel: () => {
      const { open } = this.#state;
      this.#close();
      if (open) this.select(singleCell(open));
    },
  };

  /** Selects a range and puts the focus on its head. @param isMove the head alone is selected */
  select(range: CellRange, isMove = false): void {
    const next = isMove ? singleCell(range.head) : range;
    this.#set({ range: next, open: this.#state.open });
    focusCell(this.#table.current, next.head);
    this.told.onFocus(cellAt(this.grid, next.head)?.place ?? null);
  }

  /** Goes to the first cell of an entry that has come. */
  come(entriesAre: 'rows' | 'columns', position: number): void {
    const at = entriesAre === 'rows' ? { row: position, column: 0 } : { row: 0, column: position };
    // The entry is drawn before the next frame; until then there is no cell to put the focus on.
    requestAnimationFrame(() => this.select(singleCell(at)));
  }

  readonly onKeyDown = (event: KeyboardEvent): void => {
    if (this.#state.open) return;
    const action = gridAction(event);
    if (!action) return;
    event.preventDefault();
    this.#act(action, this.#range());
  };

  readonly onFocus = (): void => {
    if (!this.#state.range) this.select(this.#range());
    else this.told.onFocus(cellAt(this.grid, this.#range().head)?.place ?? null);
  };

  readonly onCopy = (event: ClipboardEvent): void => {
    if (this.#state.open) return;
    event.clipboardData.setData('text/plain', gridText(this.grid, this.#range()));
    event.preventDefault();
  };

  readonly onCut = (event: ClipboardEvent): void => {
    if (this.#state.open) return;
    this.onCopy(event);
    empty(cellsIn(this.grid, this.#range()));
  };

  readonly onPaste = (event: ClipboardEvent): void => {
    if (this.#state.open) return;
    event.preventDefault();
    const { entries, leftOut } = pastedFields(this.grid, this.#range(), event.clipboardData.getData('text/plain'));
    if (entries.length > 0) enter(entries, leftOut);
  };

  #range(): CellRange {
    const start = singleCell({ row: 0, column: 0 });
    return clampRange(this.#state.range ?? start, gridSize(this.grid)) ?? start;
  }

  #isOpenAt({ row, column }: CellPlace): boolean {
    return this.#state.open?.row === row && this.#state.open.column === column;
  }

  #act(action: GridAction, range: CellRange): void {
    switch (action.kind) {
      case 'open':
        this.#open(range.head, action.text);
        break;
      case 'fill':
        enter(filledFields(this.grid, range, action.way));
        break;
      case 'empty':
        empty(cellsIn(this.grid, range));
        break;
      case 'discard':
        discard(cellsIn(this.grid, range));
        break;
      default:
        this.select(rangeAfter(this.grid, range, action), action.kind === 'move');
    }
  }

  #open(at: CellPlace, text: string | null): void {
    if (!this.#isOpenAt(at)) this.#set({ range: singleCell(at), open: { ...at, text } });
  }

  #close(): void {
    this.#set({ range: this.#state.range, open: null });
    this.told.onTyping(null);
  }

  #set(state: GridState): void {
    this.#state = state;
    this.#onState(state);
  }
}

export interface FieldGridWork extends GridState {
  readonly table: RefObject<HTMLTableElement | null>;
  readonly worker: GridWorker;
}

/** The worker of a grid, and what it says of selection and open cell. */
export function useFieldGrid(grid: FieldGrid, told: Told): FieldGridWork {
  const table = useRef<HTMLTableElement>(null);
  const [state, setState] = useState(NOTHING);
  const [worker] = useState(() => new GridWorker(table, grid, told, setState));
  worker.grid = grid;
  worker.told = told;
  return useMemo(() => ({ ...state, table, worker }), [state, worker]);
}
