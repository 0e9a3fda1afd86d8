/** Every group of words in the project by its name, found in the files themselves so that none can be forgotten. */
const modules = {
  ...import.meta.glob<Record<string, unknown>>('../../../src/components/words/en*.ts', { eager: true }),
  ...import.meta.glob<Record<string, unknown>>('../../../src/components/*/{words,*-words}.ts', { eager: true }),
};

const found = Object.values(modules)
  .flatMap((module) => Object.entries(module))
  .filter((entry): entry is [string, object] => typeof entry[1] === 'object' && entry[1] !== null);

export const groups: ReadonlyMap<string, object> = new Map(found);

/** Names that two groups have: a language could give only one of them. */
export const sharedNames: readonly string[] = found
  .filter(([name, group]) => groups.get(name) !== group)
  .map(([name]) => name);

/** The leaves of a group: "carry.hull" and what stands there. */
export function leaves(group: object, path = ''): [string, unknown][] {
  return Object.entries(group).flatMap(([key, word]): [string, unknown][] => {
    const at = path ? `${path}.${key}` : key;
    // The words of a list stand and fall together.
    const inner = typeof word === 'object' && word !== null && !Array.isArray(word);
    return inner ? leaves(word, at) : [[at, word]];
  });
}
