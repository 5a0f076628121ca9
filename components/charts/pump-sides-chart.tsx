import type { SideBar, SideFrame, SidesPicture } from '../../lib/views/pump-sides-picture.ts';
import { PictureFrame } from './picture-frame.tsx';
import styles from './pump-sides-chart.module.css';

interface Props {
  readonly picture: SidesPicture;
  readonly title: string;
  readonly description: string;
}

function Bar({ bar }: { readonly bar: SideBar }) {
  return (
    <g>
      <text className={styles.name} x={bar.nameX} y={bar.middle} dominantBaseline="central" textAnchor="end">
        {bar.name}
      </text>
      <rect className={styles[bar.side]} x={bar.x} y={bar.y} width={bar.width} height={bar.height} rx={2} />
      <text
        className={bar.isBetter ? styles.better : styles.figure}
        x={bar.textX}
        y={bar.middle}
        dominantBaseline="central"
      >
        {bar.isBetter ? `${bar.text} ✓` : bar.text}
      </text>
    </g>
  );
}

function Frame({ frame }: { readonly frame: SideFrame }) {
  return (
    <g>
      <line className={styles.rule} x1={frame.x} x2={frame.right} y1={frame.titleY + 6} y2={frame.titleY + 6} />
      <text className={styles.title} x={frame.x} y={frame.titleY}>
        {frame.title}
      </text>
      {frame.bars.map((bar) => (
        <Bar key={bar.side} bar={bar} />
      ))}
      <text className={frame.better === 'shared' ? styles.good : styles.words} x={frame.wordsX} y={frame.wordsY}>
        {frame.words}
      </text>
    </g>
  );
}

/** A pump each against one for all, pair by pair; the better of each pair has a tick. */
export function PumpSidesChart({ picture, title, description }: Props) {
  return (
    <PictureFrame size={picture} words={`${title}. ${description}`}>
      {picture.frames.map((frame) => (
        <Frame key={frame.title} frame={frame} />
      ))}
    </PictureFrame>
  );
}
