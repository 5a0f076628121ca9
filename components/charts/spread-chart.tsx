'use client';

import { Bar, BarChart, CartesianGrid, Cell, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { formatFixed, formatPercent } from '../../lib/views/format-number.ts';
import type { SpreadBar, SpreadView } from '../../lib/views/spread-view.ts';
import { AXIS, axisName, CHART_MARGIN, uprightName } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

interface Props {
  readonly view: SpreadView;
  readonly title: string;
  readonly description: string;
}

function SpreadCard({ bar }: { readonly bar: SpreadBar | undefined }) {
  if (!bar) return null;
  const colour = bar.isBad ? 'var(--bad)' : 'var(--accent)';
  const line = { key: 'share', name: `${bar.count} draws`, value: formatPercent(bar.share), colour };
  return <ChartTooltip heading={bar.label} lines={[line]} />;
}

/** How often each outcome came up among all draws. */
export function SpreadChart({ view, title, description }: Props) {
  return (
    <ResponsiveContainer width="100%" height={260}>
      <BarChart
        data={view.bars as SpreadBar[]}
        margin={CHART_MARGIN}
        barCategoryGap={1}
        title={title}
        desc={description}
      >
        <CartesianGrid vertical={false} stroke="var(--line)" />
        <XAxis {...AXIS} dataKey="axis" height={42} label={axisName(view.axisName)} />
        <YAxis
          {...AXIS}
          width={66}
          ticks={view.shareTicks as number[]}
          domain={[0, view.shareTicks.at(-1) ?? 1]}
          tickFormatter={(share: number) => formatFixed(100 * share, 0)}
          label={uprightName('share of draws [%]')}
        />
        <Tooltip
          isAnimationActive={false}
          cursor={{ fill: 'var(--hover)' }}
          content={({ payload }) => <SpreadCard bar={payload?.[0]?.payload as SpreadBar | undefined} />}
        />
        <Bar name="share of draws" dataKey="share" isAnimationActive={false} fill="var(--accent)">
          {view.bars.map((bar) => (
            <Cell key={bar.key} fill={bar.isBad ? 'var(--bad)' : 'var(--accent)'} />
          ))}
        </Bar>
      </BarChart>
    </ResponsiveContainer>
  );
}
