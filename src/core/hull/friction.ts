/** Friction coefficient of the ITTC 1957 line; Reynolds number above 1e4. 0.0083 at 1e5, 0.0030 at 1e7 (ITTC 1957). */
export function ittc57(reynolds: number): number {
  const decades = Math.log10(reynolds) - 2;
  return 0.075 / (decades * decades);
}
