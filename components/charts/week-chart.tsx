import { PHASE_KIND_LABELS } from '../../lib/views/phase-kinds.ts';
import type { PictureLane, PicturePanel, PictureStrip, WeekPicture } from '../../lib/views/week-picture.ts';
import { PictureFrame } from './picture-frame.tsx';
import styles from './week-chart.module.css';
import { WeekHatches } from './week-hatches.tsx';

interface Props {
  readonly picture: WeekPicture;
  readonly title: string;
  readonly description: string;
}

function Days({ picture }: { readonly picture: WeekPicture }) {
  return picture.days.map((day) => (
    <g key={day.label}>
      <line className={styles.day} x1={day.x} x2={day.x} y1={0} y2={picture.height} />
      <text className={styles.dayName} x={day.middle} y={13} textAnchor="middle">
        {day.label}
      </text>
    </g>
  ));
}

function Lane({ lane, picture }: { readonly lane: PictureLane; readonly picture: WeekPicture }) {
  const middle = lane.y + picture.laneHeight / 2;
  return (
    <g>
      <text className={styles.label} x={picture.left - 6} y={middle} dominantBaseline="central" textAnchor="end">
        {lane.label}
      </text>
      {lane.bars.map((bar) => (
        <rect
          key={`${bar.x}-${bar.kind}`}
          className={styles[bar.kind]}
          x={bar.x}
          y={lane.y + 1.5}
          width={bar.width}
          height={picture.laneHeight - 3}
        >
          <title>{bar.words}</title>
        </rect>
      ))}
    </g>
  );
}

function Strips({ strips, picture }: { readonly strips: readonly PictureStrip[]; readonly picture: WeekPicture }) {
  const top = strips[0]?.y ?? 0;
  return (
    <g>
      <text className={styles.heading} x={picture.left} y={top - 6}>
        {strips.length > 1 ? 'Pumps running' : 'Pump running'}
      </text>
      {strips.map((strip) => (
        <g key={strip.y}>
          <rect
            className={styles.groove}
            x={picture.left}
            y={strip.y}
            width={picture.right - picture.left}
            height={picture.stripHeight}
          />
          <path className={styles.pump} d={strip.path} />
          {picture.stripHeight > 5 ? (
            <text
              className={styles.label}
              x={picture.left - 6}
              y={strip.y + picture.stripHeight / 2}
              dominantBaseline="central"
              textAnchor="end"
            >
              {strip.label}
            </text>
          ) : null}
        </g>
      ))}
    </g>
  );
}

function Panel({ panel, picture }: { readonly panel: PicturePanel; readonly picture: WeekPicture }) {
  return (
    <g className={styles[panel.key]}>
      <text className={styles.heading} x={picture.left} y={panel.top - 6}>
        {panel.label} <tspan className={styles.unit}>[{panel.unit}]</tspan>
      </text>
      {panel.ticks.map((tick) => (
        <g key={tick.label}>
          <line className={styles.grid} x1={picture.left} x2={picture.right} y1={tick.y} y2={tick.y} />
          <text className={styles.label} x={picture.left - 6} y={tick.y} dominantBaseline="central" textAnchor="end">
            {tick.label}
          </text>
        </g>
      ))}
      <path className={styles.area} d={panel.area} />
      <path className={styles.line} d={panel.line} />
      {panel.limit ? (
        <g>
          <line className={styles.limit} x1={picture.left} x2={picture.right} y1={panel.limit.y} y2={panel.limit.y} />
          <text className={styles.limitName} x={picture.right - 4} y={panel.limit.y - 4} textAnchor="end">
            {panel.limit.label}
          </text>
        </g>
      ) : null}
    </g>
  );
}

/** The typical week on one time axis: what each chamber does, and under it pumps, vapour, pressure and people. */
export function WeekChart({ picture, title, description }: Props) {
  return (
    <PictureFrame size={picture} words={`${title}. ${description}`}>
      <WeekHatches />
      <Days picture={picture} />
      <text className={styles.label} x={0} y={13}>
        {picture.laneHeading}
      </text>
      {picture.lanes.map((lane) => (
        <Lane key={lane.label} lane={lane} picture={picture} />
      ))}
      <Strips strips={picture.strips} picture={picture} />
      {picture.panels.map((panel) => (
        <Panel key={panel.key} panel={panel} picture={picture} />
      ))}
    </PictureFrame>
  );
}

/** The swatches of the lanes, in the order of a batch. */
export function WeekLegend({ kinds }: { readonly kinds: readonly (keyof typeof PHASE_KIND_LABELS)[] }) {
  return (
    <ul className={styles.legend} data-legend>
      {kinds.map((kind) => (
        <li key={kind}>
          <svg width={22} height={12} aria-hidden="true">
            <rect className={styles[kind]} width={22} height={12} rx={2} />
          </svg>
          {PHASE_KIND_LABELS[kind]}
        </li>
      ))}
    </ul>
  );
}
