'use client';

import { CartesianGrid, Line, LineChart, ReferenceLine, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { formatSensible, NONE } from '../../lib/views/format-number.ts';
import type { KneeRow, KneeView } from '../../lib/views/knee-view.ts';
import { AXIS, axisName, CHART_MARGIN, uprightName } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

interface Props {
  readonly view: KneeView;
  readonly title: string;
  readonly description: string;
}

const SHARED = 'var(--series-1)';
const OWN = 'var(--series-2)';

function figure(value: number | null, unit: string): string {
  return value === null ? NONE : `${formatSensible(value)} ${unit}`;
}

function KneeCard({ row, unit }: { readonly row: KneeRow | undefined; readonly unit: string }) {
  if (!row) return null;
  const lines = [
    { key: 'own', name: 'a pump each', value: figure(row.own, unit), colour: OWN },
    { key: 'shared', name: 'one shared pump', value: figure(row.shared, unit), colour: SHARED },
    { key: 'binds', name: 'held back most by', value: row.binds, colour: 'transparent' },
  ];
  return <ChartTooltip heading={row.chambers === 1 ? '1 chamber' : `${row.chambers} chambers`} lines={lines} />;
}

/** Output as chambers are added: all on one pump, against a pump each. */
export function KneeChart({ view, title, description }: Props) {
  const { rows, ticks, knee, unit } = view;
  return (
    <ResponsiveContainer width="100%" height={260}>
      <LineChart data={rows as KneeRow[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid vertical={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          dataKey="chambers"
          padding={{ left: 16, right: 16 }}
          height={42}
          label={axisName('chambers')}
        />
        <YAxis
          {...AXIS}
          width={62}
          ticks={ticks as number[]}
          domain={[0, ticks.at(-1) ?? 1]}
          label={uprightName(`dried product [${unit}]`)}
        />
        <Tooltip
          isAnimationActive={false}
          content={({ payload }) => <KneeCard row={payload?.[0]?.payload as KneeRow | undefined} unit={unit} />}
        />
        {knee === null ? null : (
          <ReferenceLine
            x={knee}
            stroke="var(--warn)"
            strokeDasharray="4 4"
            label={{ value: 'knee', position: 'insideTopLeft', fill: 'var(--warn)', fontSize: 12 }}
          />
        )}
        <Line
          name="a pump each"
          dataKey="own"
          stroke={OWN}
          strokeWidth={2}
          strokeDasharray="6 4"
          dot={{ r: 3, strokeDasharray: 'none', fill: 'var(--panel)' }}
          isAnimationActive={false}
        />
        <Line
          name="one shared pump"
          dataKey="shared"
          stroke={SHARED}
          strokeWidth={3}
          dot={{ r: 4, fill: SHARED }}
          isAnimationActive={false}
        />
      </LineChart>
    </ResponsiveContainer>
  );
}
