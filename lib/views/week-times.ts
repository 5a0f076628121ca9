export const HOUR = 3600;
export const DAY = 24 * HOUR;
export const WEEK = 7 * DAY;

export const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'] as const;

/** A time from Monday 00:00 [s] as weekday and clock: "Tue 13:30". */
export function clockText(time: number): string {
  const minutes = Math.round(time / 60);
  const day = WEEKDAYS[Math.floor(minutes / 1440) % 7] ?? '';
  const hour = Math.floor((minutes % 1440) / 60);
  return `${day} ${String(hour).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
