const ISO = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d)(?:\.\d+)?)?(Z|[+-]\d\d:?\d\d)$/;
const DAY_MS = 86_400_000;

/** Clock time at the place where the offset of `iso` holds, `addSeconds` later, and the days since its date. */
export function clockAt(iso: string | undefined, addSeconds: number): { time: string; days: number } | undefined {
  const part = iso === undefined ? null : ISO.exec(iso);
  if (!part) return undefined;
  const [year, month, day, hour, minute, second] = part.slice(1, 7).map((digits) => Number(digits ?? 0));
  // Local clock reading kept as if it were UTC: the offset is the same at both ends, so it never enters.
  const midnight = Date.UTC(year!, month! - 1, day!);
  const at = midnight + ((hour! * 60 + minute!) * 60 + second! + addSeconds) * 1000;
  const date = new Date(Math.round(at / 60_000) * 60_000);
  if (Number.isNaN(date.getTime())) return undefined;
  return { time: date.toISOString().slice(11, 16), days: Math.floor((date.getTime() - midnight) / DAY_MS) };
}
