/** Growth that passes: a share, and bytes that are no more than chance in packing. */
const SHARE = 0.03;
const CHANCE = 150;

/** Parts that weigh more than the table in the repository says they do, in words. New parts count in those that load them. */
export function grown(
  now: Readonly<Record<string, number>>,
  before: Readonly<Record<string, number>>,
): readonly string[] {
  const words: string[] = [];
  for (const [name, bytes] of Object.entries(now)) {
    const was = before[name];
    if (was === undefined || bytes <= was * (1 + SHARE) || bytes - was <= CHANCE) continue;
    words.push(`${name} grew from ${was} to ${bytes} bytes (gzip)`);
  }
  return words;
}
