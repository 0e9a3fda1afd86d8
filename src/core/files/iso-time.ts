const ISO =
  /^(\d{4})-(\d\d)-(\d\d)T([01]\d|2[0-3]):[0-5]\d(?::[0-5]\d(?:\.\d{1,9})?)?(?:Z|[+-](?:0\d|1[0-4]):[0-5]\d)$/;

/** Whether a text is a date and time of ISO 8601 with an offset, on a day the calendar has. */
export function describesTime(text: string): boolean {
  const [, year, month, day] = ISO.exec(text)?.map(Number) ?? [];
  if (year === undefined || month === undefined || day === undefined) return false;
  return month >= 1 && month <= 12 && day >= 1 && day <= daysIn(month, year);
}

/** Whether a text is a date of ISO 8601, such as 2026-07-15, that the calendar has. */
export function describesDay(text: string): boolean {
  return /^\d{4}-\d\d-\d\d$/.test(text) && describesTime(`${text}T00:00Z`);
}

/** Days of a month counted from 1, Gregorian calendar. */
export function daysIn(month: number, year: number): number {
  if (month === 2) return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
  return [4, 6, 9, 11].includes(month) ? 30 : 31;
}
