'use client';

import {
  CartesianGrid,
  LabelList,
  ReferenceLine,
  ResponsiveContainer,
  Scatter,
  ScatterChart,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import type { ComparedPoint, ComparedView } from '../../lib/views/batch-log/compared-view.ts';
import { formatSensible } from '../../lib/views/format-number.ts';
import { AXIS, axisName, CHART_MARGIN, uprightName } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';
import { seriesColour } from './series-colour.ts';

interface Props {
  readonly view: ComparedView;
  readonly title: string;
  readonly description: string;
}

function hours(value: number): string {
  return `${formatSensible(value)} h`;
}

function ComparedCard({ point }: { readonly point: ComparedPoint | undefined }) {
  if (!point) return null;
  const lines = [
    { key: 'measured', name: 'logged', value: hours(point.measured), colour: 'var(--ink)' },
    { key: 'before', name: 'plan as it is', value: hours(point.before), colour: 'var(--ink-faint)' },
    { key: 'after', name: 'with fitted values', value: hours(point.after), colour: 'var(--accent)' },
  ];
  return <ChartTooltip heading={point.words} lines={lines} />;
}

/** Expected over logged hours: rings for the plan as it is, full marks with fitted values, and the line where both agree. */
export function ComparedChart({ view, title, description }: Props) {
  const { groups, ticks } = view;
  const most = ticks.at(-1) ?? 1;
  const axis = { ...AXIS, type: 'number', domain: [0, most], ticks: ticks as number[] } as const;
  return (
    <ResponsiveContainer width="100%" height={340}>
      <ScatterChart margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid stroke="var(--line)" />
        <XAxis {...axis} dataKey="place" height={42} label={axisName('logged [h]')} />
        <YAxis {...axis} dataKey="expected" width={56} label={uprightName('expected [h]')} />
        <ReferenceLine
          segment={[
            { x: 0, y: 0 },
            { x: most, y: most },
          ]}
          stroke="var(--ink-soft)"
          strokeDasharray="4 4"
        />
        <Tooltip
          isAnimationActive={false}
          cursor={false}
          content={({ payload }) => <ComparedCard point={payload?.[0]?.payload as ComparedPoint | undefined} />}
        />
        {groups.map((group, place) => (
          <Scatter
            key={`before ${group.product}`}
            name={`${group.name}, plan as it is`}
            data={group.points.map((point) => ({ ...point, expected: point.before }))}
            fill="none"
            stroke={seriesColour(place)}
            strokeOpacity={0.7}
            isAnimationActive={false}
          />
        ))}
        {groups.map((group, place) => (
          <Scatter
            key={`after ${group.product}`}
            name={`${group.name}, with fitted values`}
            data={group.points.map((point) => ({ ...point, expected: point.after }))}
            fill={seriesColour(place)}
            isAnimationActive={false}
          >
            <LabelList dataKey="edgeWords" position="left" fill="var(--ink-soft)" fontSize={12} />
          </Scatter>
        ))}
      </ScatterChart>
    </ResponsiveContainer>
  );
}
