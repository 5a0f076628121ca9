import type { SheetColumn } from './sheet-columns.ts';
import type { SheetLook } from './sheet-look.ts';

/** The column that names the scenario; it stands first and is always shown. */
const NAME = 'name';

/** True when a column is hidden on purpose. */
export function isHidden(column: SheetColumn, { shown }: SheetLook): boolean {
  return column.id !== NAME && shown[column.id] === false;
}

/** True when a column is shown even while its group is folded. */
export function isAlwaysShown(column: SheetColumn, { shown }: SheetLook): boolean {
  return column.id === NAME || (shown[column.id] ?? column.isHeadline);
}

/** True when a column is to be seen as long as nobody folds or opens its group by hand. */
export function isVisible(column: SheetColumn, look: SheetLook): boolean {
  return !isHidden(column, look) && (look.isWhole || isAlwaysShown(column, look));
}

/** Groups stay together, in the order of their first columns. */
function byGroup(columns: readonly SheetColumn[]): readonly SheetColumn[] {
  const groups = [...new Set(columns.map((column) => column.group))];
  return groups.flatMap((group) => columns.filter((column) => column.group === group));
}

/** All columns, hidden ones too, in the order in which they are looked at. */
export function arrangedColumns(columns: readonly SheetColumn[], { order }: SheetLook): readonly SheetColumn[] {
  if (order.length === 0) return columns;
  const usual = new Map(columns.map((column, place) => [column.id, place]));
  const wished = new Map(order.filter((id) => usual.has(id)).map((id, place) => [id, place]));
  const known = columns.filter((column) => wished.has(column.id));
  const sorted = [...known].sort((a, b) => (wished.get(a.id) ?? 0) - (wished.get(b.id) ?? 0));
  // A column that is new since then stands where it usually does: right after the one before it.
  const placed = columns.reduce<SheetColumn[]>((list, column, place) => {
    if (wished.has(column.id)) return list;
    const before = columns[place - 1];
    return list.toSpliced(before ? list.indexOf(before) + 1 : 0, 0, column);
  }, sorted);
  const name = placed.filter((column) => column.id === NAME);
  return byGroup([...name, ...placed.filter((column) => column.id !== NAME)]);
}

function idsOf(columns: readonly SheetColumn[]): string[] {
  return columns.map((column) => column.id);
}

/** The look with a column moved past its next visible neighbour of the same group; null where there is none. */
export function movedColumn(
  columns: readonly SheetColumn[],
  look: SheetLook,
  columnId: string,
  by: 1 | -1,
): SheetLook | null {
  const arranged = arrangedColumns(columns, look);
  const column = arranged.find((candidate) => candidate.id === columnId);
  const peers = arranged.filter((peer) => peer === column || (peer.group === column?.group && isVisible(peer, look)));
  const neighbour = column && column.id !== NAME ? peers[peers.indexOf(column) + by] : undefined;
  if (!neighbour || neighbour.id === NAME) return null;
  const ids = idsOf(arranged).filter((id) => id !== columnId);
  const target = ids.indexOf(neighbour.id) + (by > 0 ? 1 : 0);
  return { ...look, order: ids.toSpliced(target, 0, columnId) };
}

/** The look after columns were dragged into a new order. @param seenIds the columns on screen from left to right */
export function draggedColumns(
  columns: readonly SheetColumn[],
  look: SheetLook,
  seenIds: readonly string[],
): SheetLook {
  const before = idsOf(arrangedColumns(columns, look));
  const seen = seenIds.filter((id) => before.includes(id));
  const moving = new Set(seen);
  const next = [...seen];
  // Columns out of sight keep their places; those on screen are dealt out over the others.
  const order = before.map((id) => (moving.has(id) ? (next.shift() ?? id) : id));
  return order.join() === before.join() ? look : { ...look, order };
}

/** The look with a column shown or hidden. What is usual for it is not written down. */
export function withColumn(look: SheetLook, column: SheetColumn, isShown: boolean): SheetLook {
  const { [column.id]: _before, ...others } = look.shown;
  const plain = { ...look, shown: others };
  return isVisible(column, plain) === isShown ? plain : { ...look, shown: { ...others, [column.id]: isShown } };
}
