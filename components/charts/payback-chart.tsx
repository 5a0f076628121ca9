'use client';

import {
  CartesianGrid,
  Line,
  LineChart,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { axisMoney, quantityWithUnit, type ShownAs } from '../../lib/views/format-quantity.ts';
import type { PaybackLine, PaybackRow, PaybackView } from '../../lib/views/payback-view.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';
import { seriesColour } from './series-colour.ts';

interface Props {
  readonly view: PaybackView;
  readonly currentId: string;
  readonly shown: ShownAs;
  readonly title: string;
  readonly description: string;
}

interface CardProps {
  readonly row: PaybackRow | undefined;
  readonly lines: readonly PaybackLine[];
  readonly shown: ShownAs;
}

function PaybackCard({ row, lines, shown }: CardProps) {
  if (!row) return null;
  const cards = lines.map((line) => ({
    key: line.scenarioId,
    name: line.name,
    value: quantityWithUnit(row.cash[line.scenarioId] ?? null, 'money', shown),
    colour: seriesColour(line.place),
  }));
  return <ChartTooltip heading={`After ${row.month} months`} lines={cards} />;
}

/** Cumulative cash of each scenario against today, month by month, with the month marked in which it has paid back. */
export function PaybackChart({ view, currentId, shown, title, description }: Props) {
  const { lines, rows, ticks, months } = view;
  const isFaint = (line: PaybackLine) => lines.length > 1 && line.scenarioId !== currentId;
  return (
    <ResponsiveContainer width="100%" height={300}>
      <LineChart data={rows as PaybackRow[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid vertical={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          dataKey="month"
          type="number"
          domain={[0, months]}
          ticks={yearTicks(rows)}
          height={42}
          label={axisName('months from now')}
        />
        <YAxis
          {...AXIS}
          width={56}
          ticks={ticks as number[]}
          domain={[ticks[0] ?? 0, ticks.at(-1) ?? 1]}
          tickFormatter={(value: number) => axisMoney(value, shown)}
        />
        <ReferenceLine y={0} stroke="var(--ink-soft)" />
        <Tooltip
          isAnimationActive={false}
          content={({ payload }) => (
            <PaybackCard row={payload?.[0]?.payload as PaybackRow | undefined} lines={lines} shown={shown} />
          )}
        />
        {lines.map((line) => (
          <Line
            key={line.scenarioId}
            name={line.name}
            dataKey={(row: PaybackRow) => row.cash[line.scenarioId]}
            stroke={seriesColour(line.place)}
            strokeWidth={isFaint(line) ? 1.5 : 3}
            strokeOpacity={isFaint(line) ? 0.75 : 1}
            dot={false}
            isAnimationActive={false}
          />
        ))}
        {lines.map((line) =>
          line.paybackMonth === null ? null : (
            <ReferenceDot
              key={line.scenarioId}
              x={line.paybackMonth}
              y={0}
              r={isFaint(line) ? 3.5 : 5.5}
              fill={seriesColour(line.place)}
              stroke="var(--panel)"
              strokeWidth={1.5}
            />
          ),
        )}
        {lines.flatMap((line) =>
          line.recrossings.map((crossing) => (
            <ReferenceDot
              key={`${line.scenarioId} ${crossing.month}`}
              x={crossing.month}
              y={0}
              r={isFaint(line) ? 3 : 4.5}
              fill="var(--panel)"
              stroke={seriesColour(line.place)}
              strokeWidth={2}
            />
          )),
        )}
      </LineChart>
    </ResponsiveContainer>
  );
}

function yearTicks(rows: readonly PaybackRow[]): number[] {
  return rows.map((row) => row.month).filter((month) => month % 12 === 0);
}
