import { countOf } from '../../lib/views/format-number.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';

/** Asks before a plan that came with a link is opened. */
export function LinkedDialog() {
  const linked = usePlanner((state) => state.linked);
  const { takeLinked, dropLinked } = getPlanner();
  if (!linked) return null;
  return (
    <NoticeDialog
      title="A link brings a plan"
      onClose={dropLinked}
      closeLabel="Leave it"
      actions={
        <button type="button" onClick={takeLinked}>
          Open it as a new plan
        </button>
      }
    >
      <p>
        <strong>{linked.name}</strong>, {linked.site.shopName}: {countOf(linked.scenarios.length, 'scenario')}.
      </p>
      <p>Opened, it is one more plan in your list. Your own plans stay as they are either way.</p>
    </NoticeDialog>
  );
}
