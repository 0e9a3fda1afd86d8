/** A steady discharge: printed capacity Ah, the time it holds for s, current A, Peukert's exponent. */
export interface Discharge {
  readonly capacityAh: number;
  readonly ratedTime: number;
  readonly current: number;
  readonly exponent: number;
}

/** Time to empty, s: H (C/(I H))^k, Peukert's law with the rated time H, as tutorials give it. */
export function peukertTime({ capacityAh, ratedTime, current, exponent }: Discharge): number {
  return ratedTime * ((capacityAh * 3600) / (current * ratedTime)) ** exponent;
}

/** Time to empty, s, by the one-ampere form C1/I^k; C1 is the capacity at 1 A, not the printed one. */
export function peukertTimeFromOneAmpere(capacityAtOneAmpereAh: number, current: number, exponent: number): number {
  return (capacityAtOneAmpereAh * 3600) / current ** exponent;
}

/**
 * What a battery loses over what it gives, at `rate` times the rated current: 1 below the rated rate, rate^(k-1)
 * above, joined smoothly. Derived for this project from Peukert's law.
 */
export function rateFactor(rate: number, exponent: number): number {
  const a = rate * rate;
  const b = a * a;
  return (1 + b * b) ** ((exponent - 1) / 8);
}
