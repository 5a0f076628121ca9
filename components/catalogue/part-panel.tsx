import { type ReactNode, useEffect, useState } from 'react';
import type { Caution } from '../../lib/views/cautions.ts';
import type { FieldBlock } from '../../lib/views/fields/field-block.ts';
import { cellOfPlace } from '../../lib/views/fields/field-block.ts';
import { fieldDetails } from '../../lib/views/fields/field-details.ts';
import { previewField } from '../../lib/views/fields/preview-field.ts';
import type { SheetState } from '../../lib/views/sheet-state.ts';
import { getPlanner } from '../state/planner.ts';
import { DetailsCard } from './details-card.tsx';
import { FieldBlockView } from './field-block-view.tsx';
import { FollowLine } from './follow-line.tsx';
import { PartCautions } from './part-cautions.tsx';
import styles from './part-panel.module.css';
import type { TypedField } from './use-field-grid.ts';

interface Props {
  readonly state: SheetState;
  readonly blocks: readonly FieldBlock[];
  readonly cautions: readonly Caution[];
  /** Further tools of a block, for the entry that is chosen in it. */
  readonly tools?: (block: FieldBlock, chosen: number | null) => ReactNode;
  readonly children?: ReactNode;
}

/** A part of the plan that is not scenarios: its blocks of fields, and beside them all there is to know of one field. */
export function PartPanel({ state, blocks, cautions, tools, children }: Props) {
  const [place, setPlace] = useState<string | null>(null);
  const [typed, setTyped] = useState<TypedField | null>(null);
  const cell = place === null ? null : cellOfPlace(blocks, place);
  const onTyping = (next: TypedField | null) => {
    setTyped(next);
    getPlanner().typing(next);
  };
  // A part that is left by the browser's way back takes no leave of its open cell.
  useEffect(() => () => getPlanner().typing(null), []);
  return (
    <div className={styles.panel}>
      <FollowLine plan={state.plan} />
      <PartCautions cautions={cautions} />
      <div className={styles.sides}>
        <div className={styles.blocks}>
          {blocks.map((block) => (
            <FieldBlockView
              key={block.id}
              block={block}
              onFocus={setPlace}
              onTyping={onTyping}
              tools={tools ? (chosen) => tools(block, chosen) : undefined}
            />
          ))}
          {children}
        </div>
        <div className={styles.beside}>
          <DetailsCard
            details={cell ? fieldDetails(state.plan, cell) : null}
            place={cell?.place ?? ''}
            preview={cell && typed?.place === cell.place ? previewField(state.plan, cell, typed.text) : null}
          />
        </div>
      </div>
    </div>
  );
}
