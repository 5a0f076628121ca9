import { useState } from 'react';
import type { Plan } from '../../lib/plan/plan-types.ts';
import {
  OPTION_ORDERS,
  type OptionColumn,
  type OptionOrder,
  type OptionRow,
  orderedRows,
} from '../../lib/views/search/frontier-view.ts';
import { sendOption } from '../../lib/views/search/send-option.ts';
import { getPlanner } from '../state/planner.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import styles from './options-table.module.css';

interface Props {
  readonly rows: readonly OptionRow[];
  readonly columns: readonly OptionColumn[];
  readonly plan: Plan;
  readonly baseId: string;
  /** Place of the option that is worth most. */
  readonly worthMost: number | null;
}

const GONE = 'The scenario this search began from is gone, so what the search did not choose is not known. Look again.';

function send(plan: Plan, baseId: string, { option }: OptionRow): void {
  const gesture = sendOption(plan, baseId, option.choice);
  if (gesture) getPlanner().rowGesture(gesture);
  else getPlanner().say(GONE, 'bad');
}

interface RowProps {
  readonly row: OptionRow;
  readonly columns: readonly OptionColumn[];
  readonly isBest: boolean;
  readonly onSend: () => void;
}

function Row({ row, columns, isBest, onSend }: RowProps) {
  return (
    <tr data-best={isBest}>
      <th scope="row">
        <div className={styles.setUp}>
          <span className={styles.chambers}>{row.chambers}</span>
          <span className={styles.aside}>{row.pumps}</span>
          <span className={styles.aside}>{row.rest}</span>
          {isBest ? <span className={styles.mark}>worth most</span> : null}
        </div>
      </th>
      {columns.map(({ key, head, isFigure }) => (
        <td key={key} data-label={head} data-words={!isFigure}>
          {row[key]}
        </td>
      ))}
      <td className={styles.send}>
        <button type="button" onClick={onSend}>
          To the sheet<span className="visually-hidden">: {`${row.chambers}, ${row.pumps}, ${row.rest}`}</span>
        </button>
      </td>
    </tr>
  );
}

/** The ways on the line, each of which can be sent to the sheet as a scenario. */
export function OptionsTable({ rows, columns, plan, baseId, worthMost }: Props) {
  const [order, setOrder] = useState<OptionOrder>('cheapest');
  if (rows.length === 0) return null;
  return (
    <div className={styles.block}>
      <div className={styles.head}>
        <h3 id="options-table">The best ways</h3>
        <ChoiceBar label="Order of the table" options={OPTION_ORDERS} value={order} onChange={setOrder} />
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard */}
      <section className={styles.scroller} tabIndex={0} aria-labelledby="options-table">
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">Set-up</th>
              {columns.map(({ key, head, isFigure }) => (
                <th key={key} scope="col" data-words={!isFigure}>
                  {head}
                </th>
              ))}
              <th scope="col">
                <span className="visually-hidden">Send to the sheet</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {orderedRows(rows, order).map((row) => (
              <Row
                key={row.place}
                row={row}
                columns={columns}
                isBest={row.place === worthMost}
                onSend={() => send(plan, baseId, row)}
              />
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
}
