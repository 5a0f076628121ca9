import { useMemo } from 'react';
import { batchCostView, COST_PART_LABELS, COST_PARTS } from '../../lib/views/batch-cost-view.ts';
import { coverBars } from '../../lib/views/lender/cover-section.ts';
import type { DocumentFigure, LenderSources } from '../../lib/views/lender/document-types.ts';
import { paybackView } from '../../lib/views/payback-view.ts';
import type { ScenarioView } from '../../lib/views/scenario-view.ts';
import { stressView } from '../../lib/views/stress-view.ts';
import { weekPicture } from '../../lib/views/week-picture.ts';
import { weekView } from '../../lib/views/week-view.ts';
import { BatchCostChart } from '../charts/batch-cost-chart.tsx';
import { ChartLegend } from '../charts/chart-legend.tsx';
import { COST_PART_COLOURS } from '../charts/cost-part-colours.ts';
import { CoverChart } from '../charts/cover-chart.tsx';
import { PaybackChart } from '../charts/payback-chart.tsx';
import { WeekChart, WeekLegend } from '../charts/week-chart.tsx';
import styles from './lender-paper.module.css';

interface Props {
  readonly sources: LenderSources;
}

/** Width of a figure in the column of either paper [px]. */
const WIDTH = 660;

const COST_LEGEND = COST_PARTS.map((part) => ({
  key: part,
  label: COST_PART_LABELS[part],
  colour: COST_PART_COLOURS[part],
  mark: 'block' as const,
}));

const COVER_LEGEND = [
  { key: 'meets', label: 'meets the lender’s line (dashed)', colour: 'var(--accent)', mark: 'block' },
  { key: 'below', label: 'below it', colour: 'var(--bad)', mark: 'block' },
] as const;

function WeekFigure({ sources }: Props) {
  const { plan, scenario, result, shown } = sources;
  const view = useMemo(() => weekView(plan, scenario, result.plant, shown), [plan, scenario, result, shown]);
  const picture = useMemo(() => weekPicture({ ...view.picture, width: WIDTH }), [view]);
  return (
    <>
      <WeekLegend kinds={view.legend.map((entry) => entry.kind)} />
      <WeekChart picture={picture} title={view.finding} description={view.summary} />
    </>
  );
}

/** Today and the plan as the charts see them. */
function viewsOf({ today, result, scenario }: LenderSources): readonly ScenarioView[] {
  const now = { id: today.scenarioId, name: today.name, place: 0, result: today };
  return today.scenarioId === scenario.id ? [now] : [now, { id: scenario.id, name: scenario.name, place: 1, result }];
}

function CostFigure({ sources }: Props) {
  const { scenario, shown } = sources;
  const view = batchCostView(viewsOf(sources), scenario.id, shown);
  return (
    <>
      <ChartLegend items={COST_LEGEND} />
      <BatchCostChart view={view} shown={shown} title={view.finding} description="Running cost per batch by part." />
    </>
  );
}

function PaybackFigure({ sources }: Props) {
  const { scenario, shown } = sources;
  const view = paybackView(viewsOf(sources), scenario.id, shown);
  return (
    <PaybackChart
      view={view}
      currentId={scenario.id}
      shown={shown}
      title={view.finding}
      description="Cumulative cash against today by month."
    />
  );
}

function CoverFigure({ sources }: Props) {
  return (
    <>
      <ChartLegend items={COVER_LEGEND} />
      <CoverChart view={coverBars(sources)} title="Debt service cover by year" axis="DSCR of the year" />
    </>
  );
}

function StressFigure({ sources }: Props) {
  const { risk, result, shown } = sources;
  const view = stressView(risk, result.finance.line, shown);
  return (
    <>
      <ChartLegend items={COVER_LEGEND} />
      <CoverChart view={view} title={view.finding} />
    </>
  );
}

const FIGURES = {
  // The finding of the week stands above it as a heading, and the axis of cost says what it is.
  week: { Figure: WeekFigure, name: 'A typical week', isHeaded: true },
  batchCost: { Figure: CostFigure, name: 'What a batch costs', isHeaded: true },
  payback: { Figure: PaybackFigure, name: 'Cumulative cash against today', isHeaded: false },
  cover: { Figure: CoverFigure, name: 'Debt service cover by year', isHeaded: false },
  stress: { Figure: StressFigure, name: 'Debt cover under stress', isHeaded: false },
} as const satisfies Readonly<Record<DocumentFigure, unknown>>;

/** A chart of the document, drawn as lines and text and as wide as the column. */
export function DocumentFigureView({ figure, sources }: Props & { readonly figure: DocumentFigure }) {
  const { Figure, name, isHeaded } = FIGURES[figure];
  return (
    <figure className={styles.figure} style={{ width: WIDTH }} aria-label={name}>
      {isHeaded ? null : <figcaption>{name}</figcaption>}
      <Figure sources={sources} />
    </figure>
  );
}
