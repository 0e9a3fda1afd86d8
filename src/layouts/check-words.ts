/** One figure of shared/checks/published-table.json. */
interface Row {
  readonly what: string;
  readonly published: number;
  readonly found: number;
}

/** Endings of the names of figures in the check files, longest first. */
const UNITS: readonly (readonly [ending: string, unit: string])[] = [
  ['_kmh_out', 'km/h'],
  ['_utc', 'UTC'],
  ['_deg', '°'],
  ['_nmi', 'NM'],
  ['_min', 'min'],
  ['_m_per_s', 'm/s'],
  ['_mps', 'm/s'],
  ['_L_h', 'L/h'],
  ['_m2', 'm²'],
  ['_kn', 'kn'],
  ['_km', 'km'],
  ['_ft', 'ft'],
  ['_lb', 'lb'],
  ['_kg', 'kg'],
  ['_hp', 'hp'],
  ['_Ah', 'Ah'],
  ['_L', 'L'],
  ['_N', 'N'],
  ['_h', 'h'],
  ['_m', 'm'],
  ['_s', 's'],
];

/** Symbols of the sources in words. */
const NAMES: Readonly<Record<string, string>> = {
  CF: 'friction coefficient',
  Df: 'frictional drag',
  Cv: 'speed coefficient',
  Fz_lift: 'lift',
  Re: 'Reynolds number',
  Vm: 'mean bottom velocity',
  lp: 'centre of pressure from the transom',
  M: 'factor M',
  tau_crit: 'critical trim',
  R_over_W_mean: 'wave resistance over weight',
  KT: 'thrust coefficient KT',
  hs: 'significant wave height',
  hm0: 'significant wave height',
  tp: 'peak period',
  ts: 'significant period',
  h: 'wave height',
  current: 'stream',
  mean_CdA: 'drag area',
  distance_to_pnr: 'distance to the point of no return',
  time_to_pnr: 'time to the point of no return',
  distance_to_etp: 'distance to the point of equal time',
  time_to_etp: 'time to the point of equal time',
  top10pct: 'mean height of the highest tenth',
  max: 'highest',
  mean: 'mean height',
  sum_cos: 'sum of cosines',
};

/** The name of a figure in words, with its unit. */
export function checkWords({ what }: Row): { readonly name: string; readonly unit: string } {
  // "rise_m_by_hour 3" and "h_m, manual law": the name proper, then which of several.
  const [, symbol, rest] = /^([A-Za-z0-9_]+?)((?:_by_hour)?(?:[ ,].*)?)$/.exec(what) ?? [what, what, ''];
  if (!symbol || (/ /.test(what) && !/^[a-zA-Z0-9]+_/.test(what))) return { name: what, unit: '' };
  const found = UNITS.find(([ending]) => symbol.endsWith(ending) && symbol.length > ending.length);
  const bare = found ? symbol.slice(0, -found[0].length) : symbol;
  const name = (NAMES[bare] ?? bare.replaceAll('_', ' ')) + rest!.replaceAll('_', ' ');
  return { name, unit: found?.[1] ?? '' };
}

/** A published or worked out figure as it is read. */
export function checkFigure(figure: number, unit: string): string {
  if (unit !== 'UTC') return new Intl.NumberFormat('en', { maximumSignificantDigits: 4 }).format(figure);
  return new Date(((figure + 86_400) % 86_400) * 1000).toISOString().slice(11, 19);
}

/** How far off: a share, but degrees of an angle, seconds of a clock, and the difference from nothing. */
export function offBy({ published, found }: Row, unit: string): string {
  const off = found - published;
  if (unit === 'UTC') return signed(off, 0, 's');
  if (unit === '°') return signed(off, 2, '°');
  return published === 0 ? signed(off, 4, '') : signed((100 * off) / Math.abs(published), 2, '%');
}

function signed(value: number, places: number, unit: string): string {
  const size = Math.abs(value).toFixed(places);
  const sign = Number(size) === 0 ? '' : value > 0 ? '+' : '\u2212';
  return `${sign}${size}${unit && ` ${unit}`}`;
}
