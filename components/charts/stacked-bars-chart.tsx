'use client';

import { Bar, BarChart, CartesianGrid, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import { AXIS, axisName, CHART_MARGIN, NAMES_WIDTH } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

export interface StackedRow {
  readonly name: string;
  readonly total: number;
  readonly parts: Readonly<Record<string, number>>;
}

export interface StackedPart {
  readonly key: string;
  readonly label: string;
  /** CSS colour. */
  readonly colour: string;
}

interface Props {
  readonly rows: readonly StackedRow[];
  readonly parts: readonly StackedPart[];
  readonly ticks: readonly number[];
  readonly axis: string;
  readonly axisText: (value: number) => string;
  readonly figure: (value: number) => string;
  readonly title: string;
  readonly description: string;
}

interface CardProps extends Pick<Props, 'parts' | 'figure'> {
  readonly row: StackedRow | undefined;
}

function StackCard({ row, parts, figure }: CardProps) {
  if (!row) return null;
  const lines = parts
    .filter((part) => (row.parts[part.key] ?? 0) > 0)
    .map((part) => ({
      key: part.key,
      name: part.label,
      value: figure(row.parts[part.key] ?? 0),
      colour: part.colour,
    }));
  return <ChartTooltip heading={`${row.name}: ${figure(row.total)}`} lines={lines} />;
}

/** One bar for each row, stacked of its parts. */
export function StackedBarsChart({ rows, parts, ticks, axis, axisText, figure, title, description }: Props) {
  return (
    <ResponsiveContainer width="100%" height={76 + rows.length * 30}>
      <BarChart layout="vertical" data={rows as StackedRow[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={40}
          ticks={ticks as number[]}
          domain={[0, ticks.at(-1) ?? 1]}
          tickFormatter={axisText}
          label={axisName(axis)}
        />
        <YAxis {...AXIS} type="category" dataKey="name" width={NAMES_WIDTH} />
        <Tooltip
          isAnimationActive={false}
          cursor={{ fill: 'var(--hover)' }}
          content={({ payload }) => (
            <StackCard row={payload?.[0]?.payload as StackedRow | undefined} parts={parts} figure={figure} />
          )}
        />
        {parts.map((part) => (
          <Bar
            key={part.key}
            name={part.label}
            dataKey={(row: StackedRow) => row.parts[part.key] ?? 0}
            stackId="parts"
            fill={part.colour}
            stroke="var(--panel)"
            barSize={18}
            isAnimationActive={false}
          />
        ))}
      </BarChart>
    </ResponsiveContainer>
  );
}
