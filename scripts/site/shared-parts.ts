import { resolve } from 'node:path';

/**
 * How the site's scripts are cut into files. Left alone, a bundler makes one for every set of parts that share
 * something: a hundred for a planner with its map, and a slow phone spends more time on asking for them than on reading
 * them. Here what the same elements of pages need lies together, whichever of their parts ask for it later.
 */
const COMPONENTS = resolve('src/components');
/** Elements that the site's own pages begin with. */
export const SITE_ELEMENTS = [
  'planner/planner',
  'hire-desk/hire-desk',
  'load-table/load-table',
  'suit/suit',
  'trials/trials',
  'waters-editor/waters-editor',
  'waters-editor/fleet-editor',
  'checklist/checklist',
  'route-map/route-map',
];

/** What every page runs, those without an element too: it must not bring more along. */
export const EVERY_PAGE =
  /components\/(turn|planner\/when-idle|language\/languages|words\/(spoken|parts|en-site))\.ts$|preload-helper|rolldown.runtime/;

/** What the bundler tells of a module. */
interface Told {
  getModuleInfo(id: string): { readonly importedIds: readonly string[] } | null;
}

/** Groups for the bundler, what most elements need first: a file must not take along what belongs to more of them. */
export function sharedParts(names: readonly string[], page?: RegExp) {
  const elements = names.map((name) => `${COMPONENTS}/${name}.ts`);
  let needed: readonly ReadonlySet<string>[] | undefined;
  const whose = (id: string, told: Told): string => {
    needed ??= elements.map((element) => importedBy(element, told));
    return needed.map((ids) => (ids.has(id) ? '1' : '0')).join('');
  };
  const many = elements.map((_, i) => elements.length - i).filter((count) => count > 1);
  return [
    ...(page ? [{ name: 'page', test: page, priority: elements.length + 1 }] : []),
    ...many.map((count) => ({
      priority: count,
      debugName: `shared by ${count}`,
      name: (id: string, told: Told): string | null => {
        const which = whose(id, told);
        return which.split('1').length - 1 === count ? `shared-${which}` : null;
      },
    })),
  ];
}

/** The element's own module and all it imports from the start. */
function importedBy(element: string, told: Told): ReadonlySet<string> {
  const ids = new Set([element]);
  for (const id of ids) for (const next of told.getModuleInfo(id)?.importedIds ?? []) ids.add(next);
  return ids;
}
