const ISO = /^(\d{4}-\d\d-\d\dT\d\d:\d\d)(?::\d\d(?:\.\d+)?)?(Z|[+-]\d\d:\d\d)$/;
const LOCAL = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)/;

/** Clock reading of a departure, as a date and time input wants it; empty where there is none to read. */
export function localReading(departure: string | undefined): string {
  return ISO.exec(departure ?? '')?.[1] ?? '';
}

/** ISO 8601 with the offset that holds at that reading. `offset` gives minutes east of UTC; the device's by default. */
export function departureAt(reading: string, offset: (local: Date) => number = deviceOffset): string | undefined {
  const part = LOCAL.exec(reading);
  if (!part) return undefined;
  const [year, month, day, hour, minute] = part.slice(1).map(Number);
  const local = new Date(year!, month! - 1, day!, hour!, minute!);
  if (Number.isNaN(local.getTime())) return undefined;
  return `${reading.slice(0, 16)}:00${offsetText(offset(local))}`;
}

function deviceOffset(local: Date): number {
  return -local.getTimezoneOffset();
}

function offsetText(minutes: number): string {
  const size = Math.abs(minutes);
  const two = (figure: number) => String(figure).padStart(2, '0');
  return `${minutes < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
