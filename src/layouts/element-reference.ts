import type { ClassField, ClassMethod, CustomElement, Package } from 'custom-elements-manifest/schema';

/** The schema's 1.0 has no word for what can only be read; the analyser has. */
type Field = ClassField & { readonly readonly?: boolean };

/** One thing a page can set, call, hear or style. */
export interface Told {
  readonly name: string;
  readonly type?: string;
  readonly description: string;
  readonly usually?: string;
  readonly note?: 'property' | 'readOnly';
  readonly example: string;
}

/** A field of the builder, for one attribute. */
export interface Choice {
  readonly name: string;
  readonly description: string;
  readonly usually: string;
  /** Words to choose from; none: any text. */
  readonly words: readonly string[];
  readonly kind: 'text' | 'number' | 'boolean';
}

export type Kind = 'attributes' | 'methods' | 'events' | 'slots' | 'parts' | 'cssProperties';

export interface ElementReference {
  readonly tag: string;
  /** Name of its script. */
  readonly name: string;
  readonly summary: string;
  readonly choices: readonly Choice[];
  readonly told: Readonly<Record<Kind, readonly Told[]>>;
}

/** The published elements as a reader looks them up, each entry with an example. */
export function elementReferences({ modules }: Package): readonly ElementReference[] {
  return modules.flatMap(({ declarations = [] }) =>
    declarations.map((one) => referenceOf(one as unknown as CustomElement & { tagName: string })),
  );
}

/** What is said of every element alike, to be told once. */
export function ofAll(references: readonly ElementReference[], kind: Kind): readonly Told[] {
  const [first, ...others] = references;
  return (first?.told[kind] ?? []).filter(({ name }) =>
    others.every(({ told }) => told[kind].some((other) => other.name === name)),
  );
}

/** A description with what stands between back-ticks marked as code, as HTML. */
export function marked(text: string): string {
  const safe = text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return safe.replace(/`([^`]+)`/g, '<code>$1</code>');
}

function referenceOf(element: CustomElement & { tagName: string }): ElementReference {
  const { tagName: tag } = element;
  const it = tag.replace('homeleg-', '').replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const members = element.members ?? [];
  const fields = members.filter((member): member is Field => member.kind === 'field');
  const attributes = element.attributes ?? [];
  const choices = attributes.filter(({ name }) => name !== 'lang').map(choiceOf);
  const own = fields.filter(({ name }) => !attributes.some(({ fieldName }) => fieldName === name));
  return {
    tag,
    name: tag.replace('homeleg-', ''),
    summary: element.summary ?? '',
    choices,
    told: {
      attributes: [
        ...attributes.map((one) => ({
          ...saidOf(one),
          example: `<${tag} ${one.name}${one.type?.text === 'boolean' ? '' : `="${sampleOf(choiceOf(one))}"`}></${tag}>`,
        })),
        ...own.map((field) => ({
          ...saidOf(field),
          note: field.readonly ? ('readOnly' as const) : ('property' as const),
          example: field.readonly
            ? `console.log(${it}.${field.name});`
            : `${it}.${field.name} = ${sampleValue(field)};`,
        })),
      ],
      methods: members
        .filter((member): member is ClassMethod => member.kind === 'method')
        .map((method) => ({
          name: `${method.name}(${(method.parameters ?? []).map(({ name }) => name).join(', ')})`,
          type: method.return?.type?.text ?? 'void',
          description: method.description ?? '',
          example: `${/Promise/.test(method.return?.type?.text ?? '') ? 'await ' : ''}${it}.${method.name}(${(method.parameters ?? []).map(({ name }) => name).join(', ')});`,
        })),
      events: (element.events ?? []).map((event) => ({
        ...saidOf(event),
        example: `${it}.addEventListener('${event.name}', ({ detail }) => console.log(detail));`,
      })),
      slots: (element.slots ?? []).map((slot) => ({
        ...saidOf(slot),
        example: slot.name ? `<${tag}><p slot="${slot.name}">...</p></${tag}>` : `<${tag}><p>...</p></${tag}>`,
      })),
      parts: (element.cssParts ?? []).map((part) => ({
        ...saidOf(part),
        example: `${tag}::part(${part.name}) { font-weight: 700; }`,
      })),
      cssProperties: (element.cssProperties ?? []).map((one) => ({
        ...saidOf(one),
        example: `${tag} { ${one.name}: ${one.default?.replace(/^light-dark\((.+), .+\)$/, '$1') ?? 'teal'}; }`,
      })),
    },
  };
}

interface Described {
  readonly name: string;
  readonly type?: { readonly text: string };
  readonly description?: string;
  readonly default?: string;
}

function saidOf({ name, type, description = '', default: usual }: Described) {
  return {
    name,
    ...(type && { type: type.text }),
    description,
    // An empty text is no value worth telling.
    ...(usual && usual !== "''" && { usually: usual }),
  };
}

function choiceOf({ name, type, description = '', default: usual = '' }: Described): Choice {
  const words = [...(type?.text ?? '').matchAll(/'([\w-]*)'/g)].map(([, word]) => word!);
  const kind = /\bboolean\b/.test(type?.text ?? '')
    ? 'boolean'
    : /\bnumber\b/.test(type?.text ?? '')
      ? 'number'
      : 'text';
  return { name, description, usually: usual.replace(/^'(.*)'$/, '$1'), words, kind };
}

/** Values that show what is meant; for others the usual one, or the first that differs from it. */
const SAMPLES: Readonly<Record<string, string>> = {
  lang: 'de',
  list: 'before-launch',
  waters: '/our-waters.geojson',
  fleet: '/our-fleet.json',
  profile: '/our-boat.json',
  tiles: 'https://tiles.example/{z}/{x}/{y}.png',
  'tiles-attribution': 'Map: somebody',
  'forecast-source': 'https://wind.example/?at={lat},{lon}',
  center: '54.1, 10.2',
  zoom: '13',
  keep: 'none',
};

function sampleOf({ name, words, usually, kind }: Choice): string {
  return (
    SAMPLES[name] ??
    words.find((word) => word !== usually && word !== '') ??
    (usually || (kind === 'number' ? '1' : '...'))
  );
}

function sampleValue({ name, type, default: usual }: Field): string {
  if (/\[\]/.test(type?.text ?? '')) return `[...${name}]`;
  return usual === 'false'
    ? 'true'
    : /^'/.test(usual ?? '')
      ? usual!
      : `my${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}
