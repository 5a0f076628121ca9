import { type ReactNode, useId } from 'react';
import type { FieldBlock } from '../../lib/views/fields/field-block.ts';
import { BlockTools } from './block-tools.tsx';
import styles from './field-block-view.module.css';
import { FieldGridView } from './field-grid-view.tsx';
import { type FieldGridWork, type TypedField, useFieldGrid } from './use-field-grid.ts';

interface Props {
  readonly block: FieldBlock;
  readonly onFocus: (place: string | null) => void;
  readonly onTyping: (typed: TypedField | null) => void;
  /** Further tools for the entry that is chosen. */
  readonly tools?: (chosen: number | null) => ReactNode;
}

/** Position of the entry that the selection is in. */
function chosenIn({ list, owners }: FieldBlock, { range }: FieldGridWork): number | null {
  if (!list || !range) return null;
  const position = list.entriesAre === 'columns' ? range.head.column : range.head.row;
  return position < owners.length ? position : null;
}

/** A part of the plan: its heading, what can be done with its entries, and its grid. */
export function FieldBlockView({ block, onFocus, onTyping, tools }: Props) {
  const titleId = useId();
  const work = useFieldGrid(block.grid, { onFocus, onTyping });
  const { list } = block;
  const chosen = chosenIn(block, work);
  const isEmpty = list !== null && block.owners.length === 0;
  return (
    <section className={styles.block} aria-labelledby={titleId} data-block={block.id}>
      <div className={styles.head}>
        <h2 id={titleId}>{block.title}</h2>
        {list ? (
          <BlockTools
            block={block}
            list={list}
            chosen={chosen}
            onCome={(at) => work.worker.come(list.entriesAre, at)}
          />
        ) : null}
        {tools?.(chosen)}
      </div>
      {isEmpty ? (
        <p className={styles.none}>{block.whenEmpty}</p>
      ) : (
        <FieldGridView grid={block.grid} work={work} titleId={titleId} isSingle={list === null} />
      )}
    </section>
  );
}
