/** Registers an element once: a second copy of the code on the same page leaves the first in charge, and Node has no registry. */
export function define(tag: string, elementClass: CustomElementConstructor): void {
  const registry = globalThis.customElements;
  if (registry && !registry.get(tag)) registry.define(tag, elementClass);
}
