import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder, publishedElements } from './published.ts';

/** Where each framework looks for the elements that its templates may hold. */
const AUGMENTED = {
  react: (entries: string) => `import type { DetailedHTMLProps, HTMLAttributes } from 'react';

/** What a tag may be given in JSX: what every element may, its own properties, and its attributes and \`on...\` listeners. */
type Given<E> = DetailedHTMLProps<HTMLAttributes<E>, E> & Own<E> & Listeners;

declare module 'react' {
  namespace JSX {
    interface IntrinsicElements {
${entries}
    }
  }
}
`,
  svelte: (entries: string) => `import type { HTMLAttributes } from 'svelte/elements';

/** What a tag may be given: what every element may, its own properties, and its attributes and \`on...\` listeners. */
type Given<E> = Omit<HTMLAttributes<HTMLElement>, keyof Own<E>> & Own<E> & Listeners;

declare module 'svelte/elements' {
  interface SvelteHTMLElements {
${entries}
  }
}
`,
  vue: (entries: string) => `import type { DefineComponent, HTMLAttributes } from 'vue';

/** What a tag may be given in a template: what every element may, and its own properties. */
type Given<E> = DefineComponent<HTMLAttributes & Own<E> & { [K in keyof Listeners as Camel<K>]: Listeners[K] }>;

/** Vue writes a listener of \`homeleg-plan\` as \`onHomelegPlan\`. */
type Camel<T extends string> = T extends \`on\${infer Event}\` ? \`on\${Capitals<Event>}\` : never;
type Capitals<T extends string> = T extends \`\${infer A}-\${infer B}\` ? \`\${Capitalize<A>}\${Capitals<B>}\` : Capitalize<T>;

declare module 'vue' {
  interface GlobalComponents {
${entries}
  }
}
`,
} as const;

export const FRAMEWORKS = Object.keys(AUGMENTED) as readonly (keyof typeof AUGMENTED)[];

/** Types for the templates of frameworks; the entry itself holds no code. */
export function buildFrameworks(): void {
  const elements = publishedElements();
  const classes = elements
    .map(({ name, className }) => `import type { ${className} } from '../modules/components/${name}/${name}.js';`)
    .join('\n');
  const folder = join(packageFolder, 'frameworks');
  mkdirSync(folder, { recursive: true });
  for (const framework of FRAMEWORKS) {
    const entries = elements.map(({ tag, className }) => `    '${tag}': Given<${className}>;`).join('\n');
    const code = `${classes}\n${AUGMENTED[framework](entries)}${SHARED}`;
    writeFileSync(join(folder, `${framework}.d.ts`), code);
    writeFileSync(join(folder, `${framework}.js`), '// Types only.\nexport {};\n');
  }
}

const SHARED = `
import type { LitElement } from 'lit';

/** The element's own properties. */
type Own<E> = Partial<Omit<E, keyof LitElement>>;

/** Each event of the elements as \`onhomeleg-...\`. */
type Listeners = {
  [K in keyof HTMLElementEventMap as K extends \`homeleg-\${string}\` ? \`on\${K}\` : never]?: (event: HTMLElementEventMap[K]) => void;
};
`;
