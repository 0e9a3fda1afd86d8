/** A figure as typed, with comma or point; what is none stays as it is, for the reader to say so. Nothing: undefined. */
export function typedValue(text: string): number | string | undefined {
  const plain = text.trim();
  if (plain === '') return undefined;
  const figure = Number(plain.replace(',', '.').replace(/^[\u2212\u2013]/, '-'));
  return Number.isFinite(figure) ? figure : plain;
}
