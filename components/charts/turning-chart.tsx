'use client';

import { Bar, BarChart, CartesianGrid, ReferenceLine, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { formatFixed } from '../../lib/views/format-number.ts';
import type { TurningRow, TurningView } from '../../lib/views/turning-view.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

export const WORTH_COLOUR = 'var(--series-1)';
export const COVER_COLOUR = 'var(--series-2)';

interface Props {
  readonly view: TurningView;
  readonly title: string;
  readonly description: string;
}

function TurningCard({ row }: { readonly row: TurningRow | undefined }) {
  if (!row) return null;
  const lines = [
    { key: 'today', name: 'today', value: row.today, colour: 'transparent' },
    { key: 'worth', name: 'worth its money until', value: row.worth, colour: WORTH_COLOUR },
    { key: 'cover', name: 'lender’s line at', value: row.cover, colour: COVER_COLOUR },
  ];
  return <ChartTooltip heading={row.label} lines={lines} />;
}

function percent(value: number): string {
  return `${value > 0 ? '+' : ''}${formatFixed(value, 0)} %`;
}

/** How far each input may go from today's before the purchase is worth nothing, or the lender's line is met: the shortest on top. */
export function TurningChart({ view, title, description }: Props) {
  const { bars, ticks } = view;
  const bar = (name: string, key: 'worthAway' | 'coverAway', colour: string) => (
    <Bar name={name} dataKey={key} fill={colour} barSize={9} isAnimationActive={false} />
  );
  return (
    <ResponsiveContainer width="100%" height={60 + bars.length * 28}>
      <BarChart layout="vertical" data={bars as TurningRow[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={ticks as number[]}
          domain={[ticks[0] ?? -100, ticks.at(-1) ?? 100]}
          allowDataOverflow
          tickFormatter={percent}
          label={axisName('change from today')}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={168} interval={0} />
        <Tooltip
          isAnimationActive={false}
          cursor={{ fill: 'var(--hover)' }}
          content={({ payload }) => <TurningCard row={payload?.[0]?.payload as TurningRow | undefined} />}
        />
        {bar('worth its money until', 'worthAway', WORTH_COLOUR)}
        {bar('lender’s line at', 'coverAway', COVER_COLOUR)}
        <ReferenceLine x={0} stroke="var(--ink)" />
      </BarChart>
    </ResponsiveContainer>
  );
}
