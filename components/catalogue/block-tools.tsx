import { addEntry, duplicateEntry, type EntryGesture, removeEntry } from '../../lib/views/fields/entry-gestures.ts';
import type { BlockList, FieldBlock } from '../../lib/views/fields/field-block.ts';
import { getPlanner } from '../state/planner.ts';
import { SignButton } from '../ui/sign-button.tsx';

interface Props {
  readonly block: FieldBlock;
  readonly list: BlockList;
  /** Position of the entry that the selection is in; null when nothing is selected. */
  readonly chosen: number | null;
  /** Called with the position of an entry that has come. */
  readonly onCome: (position: number) => void;
}

/** What can be done with the entries of a list: add, copy, take out. */
export function BlockTools({ block, list, chosen, onCome }: Props) {
  const { owners } = block;
  const name = chosen === null ? '' : (owners[chosen]?.name ?? '');
  const perform = (gesture: EntryGesture, position?: number) => {
    if (getPlanner().perform(gesture) && position !== undefined) onCome(position);
  };
  return (
    <>
      <SignButton sign="plus" label={`Add ${list.noun}`} wordy onPress={() => perform(addEntry(list), owners.length)} />
      <SignButton
        sign="copy"
        label={`Copy ${name}`.trim()}
        disabled={name === ''}
        onPress={() => chosen !== null && perform(duplicateEntry(list, chosen), chosen)}
      />
      <SignButton
        sign="remove"
        label={`Take out ${name}`.trim()}
        disabled={name === ''}
        onPress={() => chosen !== null && perform(removeEntry(list, chosen))}
      />
    </>
  );
}
