import type { GroupSample, TypicalWeek } from '../plant/report-types.ts';
import { roundTicks } from './chart-scale.ts';
import { formatFixed, formatSensible } from './format-number.ts';
import { kindOfPhase, PHASE_LABELS, type PhaseKind } from './phase-kinds.ts';
import { type StepScale, stepArea, stepLine } from './step-path.ts';
import { clockText, DAY, WEEK, WEEKDAYS } from './week-times.ts';
import { binHighest, highestOf, type TraceBin } from './week-trace.ts';

/** A coloured stretch of a lane [px], with its words. */
export interface PictureBar {
  readonly x: number;
  readonly width: number;
  readonly kind: PhaseKind;
  readonly words: string;
}

export interface PictureLane {
  readonly label: string;
  readonly y: number;
  readonly bars: readonly PictureBar[];
}

export interface PictureStrip {
  readonly label: string;
  readonly y: number;
  readonly path: string;
}

export interface PictureMark {
  readonly y: number;
  readonly label: string;
}

/** A small chart under the lanes: an area, perhaps a second line, perhaps a limit. */
export interface PicturePanel {
  readonly key: 'vapour' | 'pressure' | 'crew';
  readonly label: string;
  readonly unit: string;
  readonly top: number;
  readonly bottom: number;
  readonly area: string;
  readonly line: string;
  readonly ticks: readonly PictureMark[];
  readonly limit: PictureMark | null;
}

export interface WeekPicture {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly laneHeight: number;
  readonly stripHeight: number;
  readonly days: readonly { readonly x: number; readonly middle: number; readonly label: string }[];
  /** What the lanes are; empty where there is no room for it beside the days. */
  readonly laneHeading: string;
  readonly lanes: readonly PictureLane[];
  readonly strips: readonly PictureStrip[];
  readonly panels: readonly PicturePanel[];
}

/** A quantity of the week in the user's unit. */
export interface WeekQuantity {
  readonly unit: string;
  readonly shown: (base: number) => number;
}

export interface WeekPictureInput {
  readonly week: TypicalWeek;
  readonly chambers: number;
  readonly productNames: ReadonlyMap<string, string>;
  readonly vapour: WeekQuantity;
  readonly pressure: WeekQuantity;
  /** Vapour the pump can swallow [kg/s]; null when not known. */
  readonly tolerance: number | null;
  /** Lowest pressure ceiling of the chambers [Pa]. */
  readonly ceiling: number;
  /** People on shift at each change: [time s, people]. */
  readonly onShift: readonly (readonly [number, number])[];
  /** Width of the picture [px]. */
  readonly width: number;
}

const DAY_ROW = 22;
const GAP = 14;
const PANEL_HEIGHT = 62;
const CREW_HEIGHT = 34;
const LABEL_ROW = 18;
/** Traces are drawn one step every two pixels. */
const PIXELS_PER_STEP = 2;
/** The pressure panel ends here, in ceilings: while a chamber is pumped down the pressure is far above anything of interest. */
const PRESSURE_HEADROOM = 1.4;

/** A limit above this many times the highest load is off the scale. */
const FAR_LIMIT = 3;

/** Pictures narrower than this have shorter words [px]. */
const NARROW = 560;

function isNarrow(input: WeekPictureInput): boolean {
  return input.width < NARROW;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly x: (time: number) => number;
  readonly bins: number;
}

function frameOf(width: number): Frame {
  const left = width < NARROW ? 34 : 46;
  const right = width - 6;
  return {
    left,
    right,
    x: (time) => left + (time / WEEK) * (right - left),
    bins: Math.max(84, Math.floor((right - left) / PIXELS_PER_STEP)),
  };
}

function laneHeightFor(chambers: number): number {
  if (chambers <= 6) return 18;
  return chambers <= 12 ? 14 : 10;
}

function barsOf(input: WeekPictureInput, chamber: number, { x }: Frame): PictureBar[] {
  return input.week.lanes
    .filter((span) => span.chamber === chamber)
    .map((span) => {
      const product = input.productNames.get(span.productId) ?? span.productId;
      const what = product === '' ? PHASE_LABELS[span.phase] : `${PHASE_LABELS[span.phase]}, ${product}`;
      return {
        x: x(span.start),
        width: Math.max(0, x(span.end) - x(span.start)),
        kind: kindOfPhase(span.phase),
        words: `${what}: ${clockText(span.start)} to ${clockText(span.end)}`,
      };
    });
}

function lanesOf(input: WeekPictureInput, frame: Frame, height: number): PictureLane[] {
  return Array.from({ length: input.chambers }, (_, chamber) => ({
    label: String(chamber + 1),
    y: DAY_ROW + chamber * height,
    bars: barsOf(input, chamber, frame),
  }));
}

function pumpBins(samples: readonly GroupSample[], bins: number): TraceBin[] {
  const points = samples.map((sample) => ({ time: sample.time, value: sample.pumpOn ? 1 : null }));
  return binHighest(points, WEEK, bins);
}

function stripsOf(input: WeekPictureInput, frame: Frame, top: number, height: number): PictureStrip[] {
  return input.week.samples.map((samples, group) => {
    const y = top + group * (height + 2);
    const scale: StepScale = { x: frame.x, y: (value) => y + height * (1 - value), end: WEEK };
    const path = stepArea(pumpBins(samples, frame.bins), scale);
    return { label: input.week.samples.length > 1 ? String(group + 1) : '', y, path };
  });
}

function traceOf(input: WeekPictureInput, bins: number, read: (sample: GroupSample) => number | null): TraceBin[] {
  return highestOf(
    input.week.samples.map((samples) =>
      binHighest(
        samples.map((sample) => ({ time: sample.time, value: read(sample) })),
        WEEK,
        bins,
      ),
    ),
  );
}

function peakOf(bins: readonly TraceBin[]): number {
  return bins.reduce((peak, bin) => Math.max(peak, bin.value ?? 0), 0);
}

function shownBins(bins: readonly TraceBin[], quantity: WeekQuantity, most: number): TraceBin[] {
  return bins.map((bin) => ({
    time: bin.time,
    value: bin.value === null ? null : Math.min(most, quantity.shown(bin.value)),
  }));
}

interface PanelSpec {
  readonly key: PicturePanel['key'];
  readonly label: string;
  readonly quantity: WeekQuantity;
  readonly area: readonly TraceBin[];
  readonly line: readonly TraceBin[];
  readonly limit: number | null;
  readonly limitLabel: string;
  /** Top of the scale in the engine's unit. */
  readonly most: number;
  readonly tickCount: number;
  readonly height: number;
}

function panelOf(spec: PanelSpec, frame: Frame, top: number): PicturePanel {
  const first = top + LABEL_ROW;
  const bottom = first + spec.height;
  const marks = roundTicks(0, spec.quantity.shown(spec.most), spec.tickCount);
  const most = marks.at(-1) ?? 1;
  const y = (value: number) => bottom - (value / most) * spec.height;
  const scale: StepScale = { x: frame.x, y, end: WEEK };
  return {
    key: spec.key,
    label: spec.label,
    unit: spec.quantity.unit,
    top: first,
    bottom,
    area: stepArea(shownBins(spec.area, spec.quantity, most), scale),
    line: stepLine(shownBins(spec.line, spec.quantity, most), scale),
    ticks: marks.map((mark) => ({ y: y(mark), label: tickText(mark) })),
    limit: limitOf(spec, y, most),
  };
}

function tickText(mark: number): string {
  return Number.isInteger(mark) ? formatFixed(mark, 0) : formatSensible(mark).replace(/0+$/, '');
}

function limitOf(spec: PanelSpec, y: (value: number) => number, most: number): PictureMark | null {
  if (spec.limit === null) return null;
  const value = spec.quantity.shown(spec.limit);
  return value > most ? null : { y: y(value), label: spec.limitLabel };
}

function vapourSpec(input: WeekPictureInput, bins: number): PanelSpec {
  const area = traceOf(input, bins, (sample) => sample.vapourLoad);
  const peak = peakOf(area);
  // A limit far above the load would flatten the load to nothing; it is then told in words.
  const isFar = input.tolerance !== null && input.tolerance > peak * FAR_LIMIT;
  const tolerance = input.tolerance === null ? '' : formatSensible(input.vapour.shown(input.tolerance));
  const words =
    isFar && !isNarrow(input) ? `, far below the ${tolerance} ${input.vapour.unit} that the pump can swallow` : '';
  return {
    key: 'vapour',
    label: `Vapour to the pump${words}`,
    quantity: input.vapour,
    area,
    line: [],
    limit: isFar ? null : input.tolerance,
    limitLabel: 'what the pump can swallow',
    most: isFar ? peak : Math.max(peak, input.tolerance ?? 0),
    tickCount: 2,
    height: PANEL_HEIGHT,
  };
}

function pressureSpec(input: WeekPictureInput, bins: number): PanelSpec {
  return {
    key: 'pressure',
    label: isNarrow(input)
      ? 'Pressure at pump; line: chambers'
      : 'Pressure at the pump; the line is the highest in any chamber',
    quantity: input.pressure,
    area: traceOf(input, bins, (sample) => sample.manifoldPressure),
    line: traceOf(input, bins, (sample) => sample.chamberPressure),
    limit: input.ceiling,
    limitLabel: isNarrow(input) ? 'ceiling' : 'ceiling: heat is held back',
    most: input.ceiling * PRESSURE_HEADROOM,
    tickCount: 2,
    height: PANEL_HEIGHT,
  };
}

function crewSpec(input: WeekPictureInput, bins: number): PanelSpec {
  const points = (changes: WeekPictureInput['onShift']) => changes.map(([time, value]) => ({ time, value }));
  const busy = binHighest(points(input.week.crew), WEEK, bins);
  const onShift = binHighest(points(input.onShift), WEEK, bins);
  return {
    key: 'crew',
    label: 'People busy, of those on shift',
    quantity: { unit: 'people', shown: (value) => value },
    area: busy,
    line: onShift,
    limit: null,
    limitLabel: '',
    most: Math.max(1, peakOf(busy), peakOf(onShift)),
    tickCount: 1,
    height: CREW_HEIGHT,
  };
}

function panelsOf(input: WeekPictureInput, frame: Frame, top: number): PicturePanel[] {
  const specs = [vapourSpec(input, frame.bins), pressureSpec(input, frame.bins), crewSpec(input, frame.bins)];
  let next = top;
  return specs.map((spec) => {
    const panel = panelOf(spec, frame, next);
    next = panel.bottom + GAP;
    return panel;
  });
}

/** The typical week as places on a picture [px]: lanes of chambers, pumps, vapour, pressure and crew on one time axis. */
export function weekPicture(input: WeekPictureInput): WeekPicture {
  const frame = frameOf(input.width);
  const laneHeight = laneHeightFor(input.chambers);
  const stripHeight = input.week.samples.length > 6 ? 4 : 7;
  const stripTop = DAY_ROW + input.chambers * laneHeight + GAP + LABEL_ROW;
  const panelTop = stripTop + input.week.samples.length * (stripHeight + 2) + GAP;
  const panels = panelsOf(input, frame, panelTop);
  const { x, left, right } = frame;
  return {
    width: input.width,
    height: (panels.at(-1)?.bottom ?? panelTop) + 8,
    left,
    right,
    laneHeight,
    stripHeight,
    days: WEEKDAYS.map((label, day) => ({ x: x(day * DAY), middle: x((day + 0.5) * DAY), label })),
    laneHeading: isNarrow(input) ? '' : 'Chamber',
    lanes: lanesOf(input, frame, laneHeight),
    strips: stripsOf(input, frame, stripTop, stripHeight),
    panels,
  };
}
