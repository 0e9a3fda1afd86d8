/** Whether a text is an address of map pictures: one for each {z}, {x} and {y}. */
export function tileTemplate(text: string): boolean {
  return ['{z}', '{x}', '{y}'].every((part) => text.includes(part));
}
