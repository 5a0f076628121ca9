'use client';

import { CartesianGrid, ComposedChart, Line, ResponsiveContainer, Scatter, Tooltip, XAxis, YAxis } from 'recharts';
import { axisMoney, quantityWithUnit, type ShownAs } from '../../lib/views/format-quantity.ts';
import type { FrontierView, OptionDot } from '../../lib/views/search/frontier-view.ts';
import { AXIS, axisName, CHART_MARGIN } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';

interface Props {
  readonly view: FrontierView;
  readonly shown: ShownAs;
  readonly title: string;
  readonly description: string;
}

const ON_LINE = 'var(--series-1)';
const OTHER = 'var(--ink-faint)';

function OptionCard({ dot, view, shown }: { dot: OptionDot | undefined; view: FrontierView; shown: ShownAs }) {
  if (!dot) return null;
  const row = view.rows.find((candidate) => candidate.place === dot.place);
  const money = (value: number) => quantityWithUnit(Math.round(value), 'money', shown);
  const lines = [
    { key: 'money', name: 'money needed', value: money(dot.money), colour: 'transparent' },
    { key: 'cash', name: 'cash a year', value: money(dot.yearlyCash), colour: row ? ON_LINE : OTHER },
    ...(row ? [{ key: 'payback', name: 'pays back after, months', value: row.payback, colour: 'transparent' }] : []),
  ];
  return <ChartTooltip heading={row ? `${row.chambers}, ${row.pumps}` : 'Off the line'} lines={lines} />;
}

/** Money needed against yearly cash: every option a dot, the frontier a line in steps. */
export function FrontierChart({ view, shown, title, description }: Props) {
  const { line, others, moneyTicks, cashTicks } = view;
  const money = (value: number) => axisMoney(value, shown);
  const ends = (ticks: readonly number[]): [number, number] => [ticks[0] ?? 0, ticks.at(-1) ?? 1];
  return (
    <ResponsiveContainer width="100%" height={340}>
      <ComposedChart data={line as OptionDot[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          dataKey="money"
          ticks={moneyTicks as number[]}
          domain={ends(moneyTicks)}
          tickFormatter={money}
          height={42}
          label={axisName(`money needed [${shown.currency}]`)}
        />
        <YAxis
          {...AXIS}
          type="number"
          width={72}
          ticks={cashTicks as number[]}
          domain={ends(cashTicks)}
          tickFormatter={money}
          label={{
            value: `cash a year beyond today’s [${shown.currency}]`,
            angle: -90,
            position: 'insideLeft',
            style: { textAnchor: 'middle' },
            fill: 'var(--ink-soft)',
            fontSize: 12,
          }}
        />
        <Tooltip
          isAnimationActive={false}
          cursor={false}
          content={({ payload }) => (
            <OptionCard dot={payload?.at(-1)?.payload as OptionDot | undefined} view={view} shown={shown} />
          )}
        />
        <Scatter
          name="other ways"
          data={others as OptionDot[]}
          dataKey="yearlyCash"
          fill={OTHER}
          fillOpacity={0.55}
          isAnimationActive={false}
        />
        <Line
          name="nothing is both cheaper and better"
          type="stepAfter"
          dataKey="yearlyCash"
          stroke={ON_LINE}
          strokeWidth={2}
          dot={false}
          isAnimationActive={false}
        />
        <Scatter
          name="on the line"
          data={line as OptionDot[]}
          dataKey="yearlyCash"
          fill={ON_LINE}
          isAnimationActive={false}
        />
      </ComposedChart>
    </ResponsiveContainer>
  );
}
