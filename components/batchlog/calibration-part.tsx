import { useMemo } from 'react';
import type { CalibrationState } from '../../lib/io/calibration-desk.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { calibrationFindings } from '../../lib/views/batch-log/calibration-findings.ts';
import { calibrationKey } from '../../lib/views/batch-log/calibration-key.ts';
import { holdsValues, takeValuesGesture } from '../../lib/views/batch-log/take-values.ts';
import { getPlanner } from '../state/planner.ts';
import { CalibrationFindings } from './calibration-findings.tsx';
import styles from './calibration-part.module.css';
import { ComparedFigure } from './compared-figure.tsx';
import { FittedTable } from './fitted-table.tsx';
import { getCalibrationDesk, useCalibration } from './use-calibration.ts';

function Progress({ progress }: Pick<CalibrationState, 'progress'>) {
  return (
    <p className={styles.progress} role="status" data-testid="fit-progress">
      <progress aria-label="Fitting" />
      <span>
        Pass {progress.passes}, {progress.dryings} dryings worked out
      </span>
      <button type="button" onClick={() => getCalibrationDesk().cancel()}>
        Stop
      </button>
    </p>
  );
}

type Standing = 'fresh' | 'taken' | 'stale';

const STANDING_WORDS: Readonly<Record<Standing, string>> = {
  fresh: 'The plan is untouched until you take the values over.',
  taken: 'These values are in the plan now, as measured. Undo takes them out again.',
  stale: 'The plan or the log has changed since this fit. Fit again before you take values over.',
};

function Answer({ plan, answer }: { readonly plan: Plan; readonly answer: NonNullable<CalibrationState['answer']> }) {
  const { key, value: calibration } = answer;
  const standing: Standing = useMemo(() => {
    if (calibrationKey(plan) === key) return 'fresh';
    return holdsValues(plan, calibration) ? 'taken' : 'stale';
  }, [plan, key, calibration]);
  const gesture = standing === 'fresh' ? takeValuesGesture(plan, calibration) : null;
  return (
    <>
      {calibration.batches.length === 0 ? null : (
        <ComparedFigure plan={plan} calibration={calibration} isStale={standing === 'stale'} />
      )}
      <CalibrationFindings findings={calibrationFindings(plan, calibration)} />
      <FittedTable plan={plan} calibration={calibration} isStale={standing === 'stale'} />
      <div className={styles.take}>
        <button
          type="button"
          className={styles.main}
          disabled={gesture === null}
          onClick={() => gesture && getPlanner().command(gesture.command, gesture.said)}
        >
          Use these values
        </button>
        <p data-testid="fit-standing">{STANDING_WORDS[standing]}</p>
      </div>
    </>
  );
}

/** Fits the model to the log and shows what came of it. */
export function CalibrationPart({ plan }: { readonly plan: Plan }) {
  const { status, progress, answer } = useCalibration();
  const isRunning = status === 'running';
  return (
    <section className={styles.part} aria-labelledby="calibration-title">
      <div className={styles.head}>
        <h2 id="calibration-title">What the log says of the model</h2>
        <button
          type="button"
          disabled={isRunning || plan.batchLog.length === 0}
          onClick={() => getCalibrationDesk().start(plan)}
        >
          Fit the model to the log
        </button>
        {isRunning ? <Progress progress={progress} /> : null}
        {status === 'failed' ? <p className={styles.bad}>The fit broke off. Check the log and try again.</p> : null}
      </div>
      {answer ? (
        <Answer plan={plan} answer={answer} />
      ) : (
        <p className={styles.words}>
          The model dries every logged batch again, each alone in its chamber on today’s pump and hose, and looks for
          the values of heat, dried layer and last drying that explain the hours best. Values the log cannot tell stay
          as they are. What chambers on one pump cost each other is not in it, so log batches that ran undisturbed, and
          log the hours until dry, not until somebody came.
        </p>
      )}
    </section>
  );
}
