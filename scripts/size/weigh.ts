import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Bytes, bytesOf, loadedWith, type Part, partsOf, ROOT, sumOf } from './parts.ts';

const COMPONENTS = 'src/components';

/** What every visit loads before the first answer and the map are there, beside the planner itself. */
const FIRST_PLAN = [
  `${COMPONENTS}/route-map/route-map.ts`,
  `${COMPONENTS}/route-map/leaflet-parts.ts`,
  // It stands under the map and comes with it.
  `${COMPONENTS}/waypoint-table/waypoint-table.ts`,
  // Local waters are read before they count; the waters themselves are the site's own data.
  'src/core/files/waters-file.ts',
];

/** What comes by itself after the first answer, when the page has nothing better to do. */
const AFTER = [
  `${COMPONENTS}/planner/slow-figures.ts`,
  `${COMPONENTS}/further/further.ts`,
  `${COMPONENTS}/passage-plan/passage-plan.ts`,
  `${COMPONENTS}/passage-plan/share-trip.ts`,
];

/** Data in files of their own, not code. */
const DATA = /\.(geojson|json)(\?raw)?$/;

export interface Weighed {
  /** lit, unmodified Leaflet and its sheet: the smallest usual map widget. */
  readonly usual: Bytes;
  readonly firstPlan: ReadonlySet<Part>;
  readonly afterFirst: readonly Part[];
  /** What a part adds when it is shown or asked for, by its name. */
  readonly asked: ReadonlyMap<string, Bytes>;
  readonly reserveCheck: ReadonlySet<Part>;
  /** What comes by itself after its first answer. */
  readonly afterCheck: readonly Part[];
  readonly checklist: ReadonlySet<Part>;
}

export async function weigh(): Promise<Weighed> {
  const planner = await partsOf(join(ROOT, COMPONENTS, 'planner/define.ts'));
  const firstPlan = loadedWith(planner, FIRST_PLAN);
  const later = loadedWith(planner, [...FIRST_PLAN, ...AFTER]);
  const check = await partsOf(join(ROOT, COMPONENTS, 'reserve-check/define.ts'));
  const reserveCheck = loadedWith(check, []);
  const list = await partsOf(join(ROOT, COMPONENTS, 'checklist/define.ts'));
  return {
    usual: await usualWidget(),
    firstPlan,
    afterFirst: [...later].filter((part) => !firstPlan.has(part)),
    asked: added(planner, firstPlan),
    reserveCheck,
    afterCheck: [...loadedWith(check, ['src/core/trip/plan-trip.ts'])].filter((part) => !reserveCheck.has(part)),
    checklist: loadedWith(list, []),
  };
}

function added(all: readonly Part[], first: ReadonlySet<Part>): ReadonlyMap<string, Bytes> {
  const found = new Map<string, Bytes>();
  for (const part of all) {
    const [source] = part.sources.slice(-1);
    if (!part.asked || first.has(part) || source === undefined || DATA.test(source)) continue;
    found.set(source, sumOf([...loadedWith(all, [...FIRST_PLAN, source])].filter((each) => !first.has(each))));
  }
  return found;
}

async function usualWidget(): Promise<Bytes> {
  const scratch = mkdtempSync(join(tmpdir(), 'homeleg-size-'));
  try {
    const entry = join(scratch, 'usual.js');
    const from = (path: string): string => JSON.stringify(join(ROOT, 'node_modules', path));
    writeFileSync(
      entry,
      `export * from ${from('lit/index.js')}; export * from ${from('leaflet/dist/leaflet-src.esm.js')};`,
    );
    const sheet = readFileSync(join(ROOT, 'node_modules/leaflet/dist/leaflet.css'), 'utf8');
    return sumOf([...(await partsOf(entry)), bytesOf(sheet)]);
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

/** One figure for each part, gzip bytes, as the table in the repository keeps them. */
export function tableOf(weighed: Weighed): Readonly<Record<string, number>> {
  const { firstPlan, afterFirst, reserveCheck, afterCheck, checklist, asked } = weighed;
  const rows: [string, number][] = [
    ['first plan with map', sumOf(firstPlan).gzip],
    ['first plan and what follows by itself', sumOf([...firstPlan, ...afterFirst]).gzip],
    ['reserve check', sumOf(reserveCheck).gzip],
    ['reserve check and what follows by itself', sumOf([...reserveCheck, ...afterCheck]).gzip],
    ['checklist', sumOf(checklist).gzip],
    ...[...asked].map(([source, { gzip }]): [string, number] => [source, gzip]).sort(([a], [b]) => (a < b ? -1 : 1)),
  ];
  return Object.fromEntries(rows);
}
