'use client';

import { Bar, BarChart, CartesianGrid, ReferenceLine, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import type { TornadoRow, TornadoView } from '../../lib/views/tornado-view.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

export const LOW_COLOUR = 'var(--series-2)';
export const HIGH_COLOUR = 'var(--series-1)';

/** Labels of three lines fit into a row [px]. */
const ROW = 40;
const THICKNESS = 14;

interface Props {
  readonly view: TornadoView;
  readonly axis: string;
  readonly title: string;
  readonly description: string;
}

function TornadoCard({ row }: { readonly row: TornadoRow | undefined }) {
  if (!row) return null;
  const lines = [
    { key: 'low', name: `at ${row.lowInput}`, value: row.lowText, colour: LOW_COLOUR },
    { key: 'high', name: `at ${row.highInput}`, value: row.highText, colour: HIGH_COLOUR },
  ];
  return <ChartTooltip heading={row.label} lines={lines} />;
}

/** One bar for each uncertain input, from the figure at its low to that at its high, the widest on top. */
export function TornadoChart({ view, axis, title, description }: Props) {
  const { rows, ticks, likely, axisText } = view;
  return (
    <ResponsiveContainer width="100%" height={60 + rows.length * ROW}>
      <BarChart
        layout="vertical"
        data={rows as TornadoRow[]}
        margin={CHART_MARGIN}
        barGap={-THICKNESS}
        title={title}
        desc={description}
      >
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={ticks as number[]}
          domain={[ticks[0] ?? 0, ticks.at(-1) ?? 1]}
          tickFormatter={axisText}
          label={axisName(axis)}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={150} />
        <Tooltip
          isAnimationActive={false}
          cursor={{ fill: 'var(--hover)' }}
          content={({ payload }) => <TornadoCard row={payload?.[0]?.payload as TornadoRow | undefined} />}
        />
        <Bar
          name="low"
          dataKey={(row: TornadoRow) => [Math.min(likely, row.low), Math.max(likely, row.low)]}
          fill={LOW_COLOUR}
          barSize={THICKNESS}
          isAnimationActive={false}
        />
        <Bar
          name="high"
          dataKey={(row: TornadoRow) => [Math.min(likely, row.high), Math.max(likely, row.high)]}
          fill={HIGH_COLOUR}
          barSize={THICKNESS}
          isAnimationActive={false}
        />
        <ReferenceLine x={likely} stroke="var(--ink)" />
      </BarChart>
    </ResponsiveContainer>
  );
}
