import type { Origin } from '../../inputs/quantity.ts';
import { type Place, valueAtPlace } from '../../plan/place.ts';
import type { SheetState } from '../sheet-state.ts';
import type { FieldLook } from './field-look.ts';

/** What is wrong with the text that waits in a cell. */
export interface FieldFault {
  readonly problem: string;
  readonly remedy: string;
}

/** One cell of a grid of fields, ready to be drawn. */
export interface FieldCell {
  readonly place: Place;
  readonly look: FieldLook;
  /** Whose field it is, such as the name of a product; empty for what the plan has only one of. */
  readonly owner: string;
  readonly text: string;
  readonly plainText: string;
  readonly origin: Origin | null;
  readonly fault: FieldFault | null;
}

/** The head of a row or a column. */
export interface GridLine {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
  readonly meaning: string;
  /** Heading under which it stands; lines of one group follow each other. */
  readonly group: string;
}

/** Fields of the plan as rows and columns. */
export interface FieldGrid {
  readonly rows: readonly GridLine[];
  readonly columns: readonly GridLine[];
  /** Row by row. */
  readonly cells: readonly (readonly FieldCell[])[];
}

/** Something that has the fields of a grid: an item of a catalogue, a line of a list, or the site itself. */
export interface GridOwner {
  readonly place: Place;
  readonly name: string;
}

function cellOf(state: SheetState, owner: GridOwner, look: FieldLook): FieldCell {
  const place = `${owner.place}.${look.key}`;
  const misread = state.misread.find((entry) => entry.place === place);
  const value = valueAtPlace(state.plan, place);
  return {
    place,
    look,
    owner: owner.name,
    text: misread?.text ?? look.text(value),
    plainText: misread?.text ?? look.plainText(value),
    origin: look.originOf(value),
    fault: misread ?? null,
  };
}

function lineOfLook({ key, label, unit, meaning, group }: FieldLook): GridLine {
  return { key, label, unit, meaning, group };
}

function lineOfOwner({ place, name }: GridOwner): GridLine {
  return { key: place, label: name, unit: '', meaning: '', group: '' };
}

/** Fields as rows and owners as columns: good for a few things with many fields. */
export function ownersAcross(state: SheetState, owners: readonly GridOwner[], looks: readonly FieldLook[]): FieldGrid {
  return {
    rows: looks.map(lineOfLook),
    columns: owners.map(lineOfOwner),
    cells: looks.map((look) => owners.map((owner) => cellOf(state, owner, look))),
  };
}

/** Owners as rows and fields as columns: good for many things with a few fields. */
export function ownersDown(state: SheetState, owners: readonly GridOwner[], looks: readonly FieldLook[]): FieldGrid {
  return {
    rows: owners.map(lineOfOwner),
    columns: looks.map(lineOfLook),
    cells: owners.map((owner) => looks.map((look) => cellOf(state, owner, look))),
  };
}

/** Rows under one heading. */
export interface RowGroup {
  readonly title: string;
  /** Positions of its rows, one after the other. */
  readonly rows: readonly number[];
}

/** The rows of a grid under their headings. */
export function rowGroups(rows: readonly GridLine[]): readonly RowGroup[] {
  const groups: { title: string; rows: number[] }[] = [];
  rows.forEach((line, row) => {
    const last = groups.at(-1);
    if (last && last.title === line.group) last.rows.push(row);
    else groups.push({ title: line.group, rows: [row] });
  });
  return groups;
}
