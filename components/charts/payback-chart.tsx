'use client';

import {
  Area,
  CartesianGrid,
  ComposedChart,
  Line,
  ReferenceDot,
  ReferenceLine,
  ResponsiveContainer,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import { axisMoney, quantityWithUnit, type ShownAs } from '../../lib/views/format-quantity.ts';
import type { PaybackLine, PaybackRow, PaybackView } from '../../lib/views/payback-view.ts';
import { AXIS, axisName, BAND_OPACITY, CHART_MARGIN } from './chart-look.ts';
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
  readonly bandColour: string;
  readonly shown: ShownAs;
}

function bandCard({ band }: PaybackRow, shown: ShownAs, colour: string) {
  if (!band) return [];
  const [low, high] = band.map((value) => quantityWithUnit(value, 'money', shown));
  return [{ key: 'band', name: 'Eight in ten draws', value: `${low} to ${high}`, colour }];
}

function PaybackCard({ row, lines, bandColour, shown }: CardProps) {
  if (!row) return null;
  const cards = lines.map((line) => ({
    key: line.scenarioId,
    name: line.name,
    value: quantityWithUnit(row.cash[line.scenarioId] ?? null, 'money', shown),
    colour: seriesColour(line.place),
  }));
  const moment = row.isBefore ? ', before what is bought then' : '';
  return (
    <ChartTooltip
      heading={`After ${row.month} months${moment}`}
      lines={[...cards, ...bandCard(row, shown, bandColour)]}
    />
  );
}

/** Where a line passes zero: full for its payback, hollow where it does so again. */
function PaybackMarks({ line, isFaint }: { readonly line: PaybackLine; readonly isFaint: boolean }) {
  const colour = seriesColour(line.place);
  return (
    <>
      {line.paybackMonth === null ? null : (
        <ReferenceDot
          x={line.paybackMonth}
          y={0}
          r={isFaint ? 3.5 : 5.5}
          fill={colour}
          stroke="var(--panel)"
          strokeWidth={1.5}
        />
      )}
      {line.recrossings.map(({ month }) => (
        <ReferenceDot
          key={month}
          x={month}
          y={0}
          r={isFaint ? 3 : 4.5}
          fill="var(--panel)"
          stroke={colour}
          strokeWidth={2}
        />
      ))}
    </>
  );
}

/** Cumulative cash of each scenario against today, month by month, with the month marked in which it has paid back. */
export function PaybackChart({ view, currentId, shown, title, description }: Props) {
  const { lines, rows, ticks, months } = view;
  const isFaint = (line: PaybackLine) => lines.length > 1 && line.scenarioId !== currentId;
  const bandColour = seriesColour(lines.find((line) => line.scenarioId === currentId)?.place ?? 0);
  return (
    <ResponsiveContainer width="100%" height={300}>
      <ComposedChart data={rows as PaybackRow[]} margin={CHART_MARGIN} title={title} desc={description}>
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
            <PaybackCard
              row={payload?.[0]?.payload as PaybackRow | undefined}
              lines={lines}
              bandColour={bandColour}
              shown={shown}
            />
          )}
        />
        {view.hasBand ? (
          <Area
            name="Eight in ten draws"
            dataKey={(row: PaybackRow) => row.band}
            fill={bandColour}
            fillOpacity={BAND_OPACITY}
            stroke="none"
            activeDot={false}
            isAnimationActive={false}
          />
        ) : null}
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
        {lines.map((line) => (
          <PaybackMarks key={line.scenarioId} line={line} isFaint={isFaint(line)} />
        ))}
      </ComposedChart>
    </ResponsiveContainer>
  );
}

function yearTicks(rows: readonly PaybackRow[]): number[] {
  return [...new Set(rows.map((row) => row.month))].filter((month) => month % 12 === 0);
}
