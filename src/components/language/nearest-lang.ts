/** The `lang` that holds for an element: its own or that of the nearest element around it, out of any shadow tree. */
export function nearestLang(element: Element): string {
  for (let at: Element | undefined = element; at; at = hostOf(at)) {
    const lang = at.closest('[lang]')?.getAttribute('lang');
    if (lang !== undefined && lang !== null) return lang;
  }
  return '';
}

function hostOf(element: Element): Element | undefined {
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? root.host : undefined;
}
