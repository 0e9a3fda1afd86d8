import { VERSION } from './version.ts';

/** Under which a class tells its version to other copies of the code on the same page. */
const MARK = Symbol.for('homeleg.version');
let told = false;

/**
 * Registers an element once: a second copy of the code on the same page leaves the first in charge, and Node has no
 * registry. A copy of another version says so, once.
 */
export function define(tag: string, elementClass: CustomElementConstructor): void {
  const registry = globalThis.customElements;
  if (!registry) return;
  const before = registry.get(tag);
  if (!before) {
    Object.defineProperty(elementClass, MARK, { value: VERSION });
    registry.define(tag, elementClass);
    return;
  }
  const theirs = String((before as { [MARK]?: string })[MARK] ?? '?');
  if (theirs === VERSION || told) return;
  told = true;
  console.warn(
    `Homeleg: <${tag}> is registered by version ${theirs}; version ${VERSION}, loaded later on the same page, leaves it so. Load one version on a page.`,
  );
}
