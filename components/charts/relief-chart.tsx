'use client';

import { Bar, BarChart, CartesianGrid, Cell, ReferenceLine, ResponsiveContainer, XAxis, YAxis } from 'recharts';
import { formatPercent } from '../../lib/views/format-number.ts';
import { axisMoney, type ShownAs } from '../../lib/views/format-quantity.ts';
import type { ReliefRow, ReliefView } from '../../lib/views/relief-view.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';

interface Props {
  readonly view: ReliefView;
  readonly shown: ShownAs;
  readonly title: string;
}

/** How hard each resource works. */
export function UseChart({ view, title }: Omit<Props, 'shown'>) {
  const { rows, useTicks } = view;
  return (
    <ResponsiveContainer width="100%" height={56 + rows.length * 26}>
      <BarChart layout="vertical" data={rows as ReliefRow[]} margin={CHART_MARGIN} title={title}>
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={useTicks as number[]}
          domain={[0, useTicks.at(-1) ?? 1]}
          tickFormatter={formatPercent}
          label={axisName('in use')}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={92} />
        {(useTicks.at(-1) ?? 1) > 1 ? <ReferenceLine x={1} stroke="var(--bad)" strokeDasharray="4 3" /> : null}
        <Bar dataKey="utilisation" barSize={12} isAnimationActive={false} fill="var(--line-control)">
          {rows.map((row) => (
            <Cell key={row.resource} fill={(row.utilisation ?? 0) > 1 ? 'var(--bad)' : 'var(--line-control)'} />
          ))}
        </Bar>
      </BarChart>
    </ResponsiveContainer>
  );
}

/** What a quarter more of each resource would bring. */
export function GainChart({ view, shown, title }: Props) {
  const { rows, gainTicks } = view;
  return (
    <ResponsiveContainer width="100%" height={56 + rows.length * 26}>
      <BarChart layout="vertical" data={rows as ReliefRow[]} margin={CHART_MARGIN} title={title}>
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={gainTicks as number[]}
          domain={[gainTicks[0] ?? 0, gainTicks.at(-1) ?? 1]}
          tickFormatter={(value: number) => axisMoney(value, shown)}
          label={axisName('a quarter more brings, a week')}
        />
        <YAxis {...AXIS} type="category" dataKey="label" width={92} />
        <ReferenceLine x={0} stroke="var(--ink-soft)" />
        <Bar dataKey="gain" barSize={12} isAnimationActive={false} fill="var(--accent)" />
      </BarChart>
    </ResponsiveContainer>
  );
}
