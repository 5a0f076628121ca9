import { computedIn } from '../../lib/io/engine-desk.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { shownAs } from '../../lib/views/entry-columns.ts';
import { followFigures } from '../../lib/views/follow-figures.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import styles from './follow-line.module.css';

/** The chosen scenario's main figures, so that it is seen at once what a change does. Old ones are grey until new ones come. */
export function FollowLine({ plan }: { readonly plan: Plan }) {
  const currentId = usePlanner((state) => state.currentId);
  const computed = usePlanner((state) => computedIn(state.desk, state.currentId));
  const result = computed.lastResult;
  const { outcome } = computed;
  const refused = outcome?.kind === 'refused' ? outcome.findings[0] : undefined;
  const figures = result ? followFigures(OUTPUTS, result, shownAs(plan)) : [];
  return (
    <div
      className={styles.line}
      data-testid="follow"
      data-state={outcome === null ? 'working' : refused ? 'held' : 'fresh'}
    >
      <select
        className={styles.pick}
        aria-label="Scenario whose figures follow"
        value={currentId}
        onChange={(event) => getPlanner().lookAt(event.target.value)}
      >
        {plan.scenarios.map((scenario) => (
          <option key={scenario.id} value={scenario.id}>
            {scenario.name}
          </option>
        ))}
      </select>
      {figures.length === 0 && !refused ? <span className={styles.label}>working …</span> : null}
      <dl className={styles.figures}>
        {figures.map((figure) => (
          <div key={figure.id} data-figure={figure.id}>
            <dt className={styles.label}>{figure.label}</dt>
            <dd>{figure.text}</dd>
          </div>
        ))}
      </dl>
      {refused ? (
        <p className={styles.held}>
          {refused.problem} {refused.remedy}
        </p>
      ) : null}
    </div>
  );
}
