import { toBase } from '../../units/convert.ts';
import type { LogEntry } from '../plan-types.ts';

/** A figure in the log's own unit, with no more digits than were written down. */
function converted(value: number, dimension: 'mass' | 'pressure', unit: string): number {
  return Number(toBase(value, dimension, unit).toPrecision(5));
}

type Unnamed<Kind extends LogEntry['kind']> = Omit<Extract<LogEntry, { kind: Kind }>, 'id'>;

/** A batch as the shop wrote it down: pounds, hours, millitorr. */
function batch(
  date: string,
  product: string,
  wet: number,
  dry: number,
  hours: number,
  peak: number | null,
  note = '',
): Unnamed<'batch'> {
  return {
    kind: 'batch',
    date,
    chamber: 'mid',
    product,
    wet: converted(wet, 'mass', 'lb'),
    dry: converted(dry, 'mass', 'lb'),
    hours,
    highestPressure: peak === null ? null : converted(peak, 'pressure', 'mTorr'),
    note,
  };
}

/** A pressure-rise test: millitorr and minutes. */
function test(date: string, from: number, to: number, minutes: number, note = ''): Unnamed<'pressureRise'> {
  const pressure = (value: number) => converted(value, 'pressure', 'mTorr');
  return { kind: 'pressureRise', date, chamber: 'mid', from: pressure(from), to: pressure(to), minutes, note };
}

/**
 * An invented autumn. The batches were worked out by the model with less contact (6.2 W/(m²·K)), slower tails, a tighter soup
 * and slightly wetter food than the plan believes, then shaken by 4.5 % and rounded as people round. One was forgotten over
 * a weekend.
 */
const ENTRIES = [
  batch('2026-09-01', 'strawberries', 23, 2.2, 18.5, 620),
  batch('2026-09-02', 'bean-soup', 22.5, 4.8, 14, null),
  batch('2026-09-03', 'puffed-candy', 16.5, 16.15, 2, 330),
  test('2026-09-05', 220, 850, 10, 'Empty, dry, trap cold'),
  batch('2026-09-07', 'sweetcorn', 25, 6.3, 18.5, 670),
  batch('2026-09-09', 'strawberries', 23.5, 2.2, 21.5, null),
  batch('2026-09-14', 'strawberries', 15, 1.4, 13.5, 680, 'Half trays, for a small order'),
  batch('2026-09-16', 'sweetcorn', 24.5, 6.4, 18, 610),
  batch('2026-09-18', 'puffed-candy', 17, 16.6, 2.25, null),
  batch('2026-09-22', 'bean-soup', 23, 5.05, 14, 630),
  batch('2026-09-24', 'bean-soup', 30, 6.6, 18, 570, 'Trays filled to the rim'),
  batch('2026-09-28', 'strawberries', 23, 2.2, 19, null),
  batch('2026-10-01', 'puffed-candy', 16, 15.65, 2, 340),
  batch('2026-10-05', 'sweetcorn', 31, 7.95, 23, 610),
  batch('2026-10-07', 'strawberries', 30.5, 2.9, 27, null),
  test('2026-10-10', 275, 590, 5),
  batch('2026-10-12', 'strawberries', 22.5, 2.1, 20, 610),
  batch('2026-10-14', 'bean-soup', 14.5, 3.05, 10, 630),
  batch('2026-10-16', 'strawberries', 23, 2.2, 62, 640, 'Stood over the weekend'),
  batch('2026-10-19', 'sweetcorn', 16, 4.05, 12.5, null),
  batch('2026-10-21', 'puffed-candy', 24, 23.5, 2.5, 320),
  batch('2026-10-26', 'strawberries', 23, 2.15, 19.5, 600),
  batch('2026-10-29', 'bean-soup', 23, 4.8, 14.5, null),
  test('2026-10-31', 210, 840, 10, 'New door seal ordered'),
  batch('2026-11-03', 'sweetcorn', 25, 6.3, 17.5, 630),
  batch('2026-11-05', 'puffed-candy', 16.5, 16.1, 2.25, 330),
] as const;

/** What the demo shop has logged. */
export const DEMO_BATCH_LOG: readonly LogEntry[] = ENTRIES.map((entry, i) => ({ ...entry, id: `log-${i + 1}` }));
