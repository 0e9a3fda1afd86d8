import { globSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { create, ts } from '@custom-elements-manifest/analyzer';
import { litPlugin } from '@custom-elements-manifest/analyzer/src/features/framework-plugins/lit/lit.js';
import type {
  ClassDeclaration,
  ClassField,
  ClassMethod,
  CustomElement,
  Module,
  Package,
} from 'custom-elements-manifest/schema';
import { eventTypes } from './events.ts';
import { publishedElements, root } from './published.ts';

const TOKENS = 'src/components/theme/tokens.styles.ts';

/** custom-elements.json: the published elements as their comments and types describe them, and nothing private. */
export function elementsManifest(): Package {
  const elements = publishedElements();
  // The analyser settles a class by its base only after having read the base.
  const read = analysed([...new Set(elements.flatMap(({ module }) => [...basesOf(module), module]))]);
  const events = new Map([...eventTypes()].map(([name, { module, type }]) => [name, detailOf(module, type)]));
  const aliases = choices();
  const constants = wordConstants();
  const modules = elements.map(({ tag, className, module }): Module => {
    const declaration = read.modules
      .find(({ path }) => path === module)
      ?.declarations?.find((one) => one.kind === 'class' && one.name === className);
    if (!declaration) throw new Error(`${module} has no class ${className}`);
    const path = published(module);
    const described = asPublished(declaration as Described, { tag, events, aliases, constants });
    return {
      kind: 'javascript-module',
      path,
      declarations: [described],
      exports: [
        { kind: 'js', name: className, declaration: { name: className, module: path } },
        { kind: 'custom-element-definition', name: tag, declaration: { name: className, module: path } },
      ],
    };
  });
  const whole: Package = { schemaVersion: '1.0.0', readme: 'README.md', modules };
  // What is inherited names its source; outside only the published module is there.
  return JSON.parse(JSON.stringify(whole).replace(/"\/?(src\/[\w/-]+\.ts)"/g, (_, source) => `"${published(source)}"`));
}

/** Modules of ours whose classes the one in this module builds on, the lowest first. */
function basesOf(module: string): readonly string[] {
  const text = readFileSync(join(root, module), 'utf8');
  const [, base] = /export (?:abstract )?class \w+ extends (\w+)/.exec(text) ?? [];
  const [, from] = new RegExp(`import \\{[^}]*\\b${base}\\b[^}]*\\} from '(\\.[^']+)'`).exec(text) ?? [];
  if (!base || !from) return [];
  const file = posix.join(posix.dirname(module), from);
  return [...basesOf(file), file];
}

function analysed(files: readonly string[]): Package {
  const modules = files.map((file) =>
    ts.createSourceFile(file, readFileSync(join(root, file), 'utf8'), ts.ScriptTarget.ES2022, true),
  );
  return create({ modules, plugins: litPlugin(), context: { dev: false } });
}

function published(source: string): string {
  return source.replace(/^src\//, 'modules/').replace(/\.ts$/, '.js');
}

type Described = ClassDeclaration & CustomElement;

interface Known {
  readonly tag: string;
  readonly events: ReadonlyMap<string, string>;
  readonly aliases: ReadonlyMap<string, string>;
  readonly constants: ReadonlyMap<string, string>;
}

function asPublished(declaration: Described, { tag, ...known }: Known): Described {
  const { members = [], attributes = [], ...rest } = declaration;
  const open = members.filter(
    (member) =>
      member.privacy === undefined && !member.static && !member.name.startsWith('#') && member.name !== 'constructor',
  );
  const fields = open
    .filter((member): member is ClassField => member.kind === 'field')
    .map((field) => spelledOut(field, known));
  const methods = open.filter((member): member is ClassMethod => member.kind === 'method');
  const defaults = tokenDefaults();
  return {
    ...rest,
    tagName: tag,
    summary: rest.summary?.replace(/\s+/g, ' '),
    members: [...fields, ...methods],
    attributes: attributes.map((attribute) => {
      const field = fields.find(({ name }) => name === attribute.fieldName);
      return spelledOut({ ...attribute, description: attribute.description ?? field?.description }, known);
    }),
    events: rest.events?.map((event) => ({
      ...event,
      type: { text: known.events.get(event.name) ?? event.type?.text ?? 'CustomEvent' },
    })),
    cssProperties: rest.cssProperties?.map((one) => ({ ...one, default: one.default ?? defaults.get(one.name) })),
  };
}

/** Types that are a choice of a few words and constants that are a word, in the place of their names. */
function spelledOut<T extends { type?: { text: string }; default?: string; description?: string }>(
  one: T,
  { aliases, constants }: Pick<Known, 'aliases' | 'constants'>,
): T {
  const type = one.type && (aliases.get(one.type.text) ?? one.type.text);
  const usual = one.default && (constants.get(one.default) ?? one.default);
  return {
    ...one,
    ...(type && { type: { text: type } }),
    // Of other constants nobody outside knows what they hold.
    ...(usual && { default: /^[A-Z_]{3,}$/.test(usual) ? undefined : usual }),
    ...(one.description && { description: one.description.replace(/\s*\n\s*/g, ' ') }),
  };
}

/** Constants that are a word, by their name. */
function wordConstants(): ReadonlyMap<string, string> {
  const files = globSync('src/components/**/*.ts', { cwd: root });
  return new Map(
    files
      .flatMap((file) => [...readFileSync(join(root, file), 'utf8').matchAll(/^export const ([A-Z_]+) = ('[^']*');/gm)])
      .map(([, name, word]) => [name!, word!]),
  );
}

/** The detail of an event spelled out where it is a type of the same file. */
function detailOf(file: string, type: string): string {
  const text = readFileSync(join(root, file), 'utf8');
  const [, written] =
    new RegExp(`export type ${type} = ([\\s\\S]*?);\\n(?=\\n|/\\*\\*|export|import|type|interface|const)`).exec(text) ??
    [];
  return (written ?? type).replace(/\s+/g, ' ');
}

/** Types that are a choice of a few words, by their name. */
function choices(): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const file of globSync('src/{components,core}/**/*.ts', { cwd: root })) {
    for (const [, name, words] of readFileSync(join(root, file), 'utf8').matchAll(
      /export type (\w+) =\s*\|?\s*('[\w-]*'(?:\s*\|\s*'[\w-]*')*);/g,
    )) {
      found.set(name!, words!.replace(/\s+/g, ' '));
    }
  }
  return found;
}

/** Custom properties with the value that holds where a page sets none. */
function tokenDefaults(): ReadonlyMap<string, string> {
  const sheet = readFileSync(join(root, TOKENS), 'utf8');
  return new Map([...sheet.matchAll(/var\((--homeleg-[\w-]+), (.+)\);/g)].map(([, name, value]) => [name!, value!]));
}
