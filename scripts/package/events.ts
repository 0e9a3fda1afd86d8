import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './published.ts';

/** Where the type of an event is told to TypeScript. */
export interface EventType {
  /** The module, from the project's root. */
  readonly module: string;
  readonly type: string;
}

/** Events by name, as the elements tell TypeScript of them. */
export function eventTypes(): ReadonlyMap<string, EventType> {
  const types = new Map<string, EventType>();
  for (const file of globSync('src/components/**/*.ts', { cwd: root })) {
    const module = file.replaceAll('\\', '/');
    const [map] = /interface HTMLElementEventMap \{[^}]*\}/.exec(readFileSync(join(root, module), 'utf8')) ?? [];
    for (const [, name, type] of map?.matchAll(/'([\w-]+)': (.+);/g) ?? []) types.set(name!, { module, type: type! });
  }
  return types;
}

/** The events that the comment of an element names. */
export function eventsOf(module: string): readonly string[] {
  const text = readFileSync(join(root, module), 'utf8');
  return [...text.matchAll(/^ \* @fires (?:\{\w+\} )?(homeleg-[\w-]+)/gm)].map(([, name]) => name!);
}
