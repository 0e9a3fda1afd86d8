/** For an attribute with text: taken away, it is as if it had never been there, not null. */
export function written(usual: string) {
  return { fromAttribute: (value: string | null): string => value ?? usual };
}

/** The same for a number that has no usual one. */
export const writtenNumber = {
  fromAttribute: (value: string | null): number | undefined => (value === null ? undefined : Number(value)),
};
