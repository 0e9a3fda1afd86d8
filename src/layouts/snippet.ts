/** What somebody chose for an element on a page of their own. */
export interface Chosen {
  readonly tag: string;
  /** Where the scripts lie, with a slash at the end. */
  readonly folder: string;
  /** In their order; true stands for an attribute without a value. */
  readonly attributes: readonly (readonly [name: string, value: string | true])[];
  readonly styles: readonly (readonly [name: string, value: string])[];
}

/** The lines for the page: its script, and the element. */
export function markupOf({ tag, folder, attributes }: Chosen): string {
  const script = `${folder.trim().replace(/\/*$/, '/')}${tag.replace('homeleg-', '')}.js`;
  return `<script type="module" src="${escaped(script)}"></script>\n${tagOf({ tag, attributes })}`;
}

/** The element alone. */
export function tagOf({ tag, attributes }: Pick<Chosen, 'tag' | 'attributes'>): string {
  const given = attributes.map(([name, value]) => (value === true ? ` ${name}` : ` ${name}="${escaped(value)}"`));
  return `<${tag}${given.join('')}></${tag}>`;
}

/** The lines for the style sheet, if any are needed. */
export function sheetOf({ tag, styles }: Chosen): string {
  if (styles.length === 0) return '';
  return `${tag} {\n${styles.map(([name, value]) => `  ${name}: ${value};`).join('\n')}\n}`;
}

/** For text and for values in double quotes. */
export function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}
