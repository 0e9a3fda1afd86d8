import type { Part } from './parts.ts';

/** What the bytes are for, in the order they are looked through; the first that fits a source file counts. */
const PURPOSES: readonly (readonly [purpose: string, sources: RegExp])[] = [
  ['lit', /node_modules\/(@lit|lit)/],
  ['Leaflet, without what only map pictures need', /node_modules\/leaflet/],
  ['Sums: the boat in the water (hull, drive, load, curve)', /src\/core\/(hull|drive|load|curve|craft)\/|b-series/],
  ['Sums: way, waters, wind, tide and daylight', /src\/core\/(route|water)\/|node_modules\/(flat|suncalc)/],
  ['Sums: the trip sailed in all its cases and judged', /src\/core\/(trip|hire|units)\//],
  ['Readers of files', /src\/core\/files\/|node_modules\/valibot/],
  ['Map of the route, drawn and edited', /components\/route-map\//],
  ['Table of waypoints: the way without a map', /components\/waypoint-table\//],
  ['Answer and fuel bar', /components\/(answer|fuel-bar|curve-plot)\//],
  ['Words in English', /components\/(words|plan-text)\//],
  ['Fields, units, language, colours', /components\/(field|units|language|theme|conditions-form)\//],
  ['The element itself: what was entered, kept, undone, told to the page', /components\//],
  ['Invented boats and first trip', /shared\//],
];
const REST = 'The bundler\u2019s own';

/** gzip bytes by what they are for. */
function bought(parts: Iterable<Part>): ReadonlyMap<string, number> {
  const sums = new Map([...PURPOSES.map(([purpose]) => purpose), REST].map((purpose) => [purpose, 0]));
  for (const { shares } of parts) {
    for (const [source, bytes] of shares) {
      const purpose = PURPOSES.find(([, sources]) => sources.test(source))?.[0] ?? REST;
      sums.set(purpose, sums.get(purpose)! + bytes);
    }
  }
  return sums;
}

/** Rows of Markdown: what for, and bytes of both. */
export function boughtTable(plan: Iterable<Part>, check: Iterable<Part>): string {
  const first = bought(plan);
  const small = bought(check);
  const figure = (bytes: number) => (bytes < 0.5 ? '' : Math.round(bytes).toLocaleString('en'));
  const total = (of: ReadonlyMap<string, number>) => figure([...of.values()].reduce((all, bytes) => all + bytes, 0));
  const rows = [...first].map(
    ([purpose, bytes]) => `| ${purpose} | ${figure(bytes)} | ${figure(small.get(purpose)!)} |`,
  );
  const head = ['| gzip bytes for | first plan with map | reserve check |', '| --- | ---: | ---: |'];
  return [...head, ...rows, `| together | ${total(first)} | ${total(small)} |`].join('\n');
}
