/** Weeks in a month: 365.25 days ÷ 12 months ÷ 7 days, about 4.348. The one place where weeks become months. */
export const WEEKS_PER_MONTH = 365.25 / 12 / 7;

/** Weekly amount of a monthly one. @param monthly any unit per month */
export function perWeek(monthly: number): number {
  return monthly / WEEKS_PER_MONTH;
}

/** Monthly amount of a weekly one. @param weekly any unit per week */
export function perMonth(weekly: number): number {
  return weekly * WEEKS_PER_MONTH;
}
