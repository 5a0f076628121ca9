'use client';

import {
  Bar,
  BarChart,
  CartesianGrid,
  Cell,
  LabelList,
  ReferenceLine,
  ResponsiveContainer,
  XAxis,
  YAxis,
} from 'recharts';
import { formatFixed } from '../../lib/views/format-number.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';

interface CoverRow {
  readonly id: string;
  readonly label: string;
  readonly cover: number | null;
  readonly coverText: string;
  readonly meetsLine: boolean;
}

interface Props {
  readonly view: { readonly rows: readonly CoverRow[]; readonly ticks: readonly number[]; readonly line: number };
  readonly title: string;
  /** What each bar is of. */
  readonly axis?: string;
}

/** Part of the axis that a figure takes. */
const ROOM = 0.1;

/** Debt cover in each case or year, against the lender's line. */
export function CoverChart({ view, title, axis = 'lowest DSCR of any twelve months' }: Props) {
  const { rows, ticks, line } = view;
  const [first = 0, last = 1] = [ticks[0], ticks.at(-1)];
  // The figure of a bar to the left stands beyond its end.
  const least = first < 0 ? first - ROOM * (last - first) : first;
  return (
    <ResponsiveContainer width="100%" height={76 + rows.length * 30}>
      <BarChart
        layout="vertical"
        data={rows as CoverRow[]}
        margin={CHART_MARGIN}
        title={title}
        desc={`Debt cover against the lender’s line: ${axis}.`}
      >
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={ticks as number[]}
          domain={[least, last]}
          tickFormatter={(value: number) => formatFixed(value, 1)}
          label={axisName(axis)}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={168} />
        <ReferenceLine x={0} stroke="var(--ink-soft)" />
        <Bar dataKey="cover" barSize={16} isAnimationActive={false}>
          {rows.map((row) => (
            <Cell key={row.id} fill={row.meetsLine ? 'var(--accent)' : 'var(--bad)'} />
          ))}
          <LabelList dataKey="coverText" position="right" fill="var(--ink)" fontSize={12} />
        </Bar>
        <ReferenceLine x={line} stroke="var(--ink)" strokeDasharray="4 3" />
      </BarChart>
    </ResponsiveContainer>
  );
}
