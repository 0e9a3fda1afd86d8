/** A name that no other entry has: with a number behind it where it is taken. */
export function freeName(wanted: string, taken: readonly string[]): string {
  if (!taken.includes(wanted)) return wanted;
  const stem = wanted.replace(/ \d+$/, '');
  let number = 2;
  while (taken.includes(`${stem} ${number}`)) number++;
  return `${stem} ${number}`;
}
