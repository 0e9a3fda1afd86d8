/** Oil for a tank of fuel at `ratio` parts of fuel to one, in the unit of `fuel`; the mixture counts as fuel volume. */
export function oilForFuel(fuel: number, ratio: number): number {
  return fuel / ratio;
}
