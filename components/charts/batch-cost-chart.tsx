'use client';

import { Bar, BarChart, CartesianGrid, ResponsiveContainer, Tooltip, XAxis, YAxis } from 'recharts';
import type { CostPart } from '../../lib/model/scenario-result.ts';
import {
  type BatchCostRow,
  type BatchCostView,
  COST_PART_LABELS,
  COST_PARTS,
} from '../../lib/views/batch-cost-view.ts';
import { axisMoney, quantityWithUnit, type ShownAs } from '../../lib/views/format-quantity.ts';
import { AXIS, axisName, CHART_MARGIN, NAMES_WIDTH } from './chart-look.ts';
import { ChartTooltip } from './chart-tooltip.tsx';
import { COST_PART_COLOURS } from './cost-part-colours.ts';

interface Props {
  readonly view: BatchCostView;
  readonly shown: ShownAs;
  readonly title: string;
  readonly description: string;
}

function CostCard({ row, shown }: { readonly row: BatchCostRow | undefined; readonly shown: ShownAs }) {
  if (!row) return null;
  const lines = COST_PARTS.map((part) => ({
    key: part,
    name: COST_PART_LABELS[part],
    value: quantityWithUnit(row[part], 'money', shown),
    colour: COST_PART_COLOURS[part],
  }));
  return <ChartTooltip heading={`${row.name}: ${quantityWithUnit(row.total, 'money', shown)}`} lines={lines} />;
}

/** What an average batch costs, scenario by scenario, stacked by part. */
export function BatchCostChart({ view, shown, title, description }: Props) {
  const { rows, ticks } = view;
  return (
    <ResponsiveContainer width="100%" height={72 + rows.length * 34}>
      <BarChart layout="vertical" data={rows as BatchCostRow[]} margin={CHART_MARGIN} title={title} desc={description}>
        <CartesianGrid horizontal={false} stroke="var(--line)" />
        <XAxis
          {...AXIS}
          type="number"
          height={42}
          label={axisName('running cost of an average batch')}
          ticks={ticks as number[]}
          domain={[0, ticks.at(-1) ?? 1]}
          tickFormatter={(value: number) => axisMoney(value, shown)}
        />
        <YAxis {...AXIS} type="category" dataKey="name" width={NAMES_WIDTH} />
        <Tooltip
          isAnimationActive={false}
          cursor={{ fill: 'var(--hover)' }}
          content={({ payload }) => <CostCard row={payload?.[0]?.payload as BatchCostRow | undefined} shown={shown} />}
        />
        {COST_PARTS.map((part: CostPart) => (
          <Bar
            key={part}
            name={COST_PART_LABELS[part]}
            dataKey={part}
            stackId="cost"
            fill={COST_PART_COLOURS[part]}
            stroke="var(--panel)"
            barSize={18}
            isAnimationActive={false}
          />
        ))}
      </BarChart>
    </ResponsiveContainer>
  );
}
