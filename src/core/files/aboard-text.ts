import type { Aboard } from '../load/shapes.ts';

/**
 * Who and what is aboard, in a cell: entries parted by semicolons, each a kind and a mass in kg, then where it is
 * ("@helm" a place of the hull, "@1.2/-0.3/0.4" m forward, to starboard and up), "helm" for who steers, "#id" and a
 * name in quotes. "adult 85 @helm helm; child 30; gear 20" is enough.
 */
export function aboardText(items: readonly Aboard[]): string {
  if (items.length === 0) return NOBODY;
  return items
    .map(({ id, kind, name, mass, station, at, helm }) => {
      const parts = [kind, String(mass)];
      if (at) parts.push(`@${[at.x, at.y, ...(at.z === undefined ? [] : [at.z])].join('/')}`);
      if (station !== undefined) parts.push(`@${quoted(station)}`);
      if (helm) parts.push('helm');
      parts.push(`#${quoted(id)}`);
      if (name !== undefined) parts.push(JSON.stringify(name));
      return parts.join(' ');
    })
    .join('; ');
}

const NOBODY = 'nobody';

/** Reads it back. Undefined where an entry cannot be read. */
export function aboardFromText(text: string): Aboard[] | undefined {
  const items: Aboard[] = [];
  if (text.trim() === NOBODY) return items;
  for (const entry of partsOf(text, ';')) {
    if (entry.trim() === '') continue;
    const item = itemOf(partsOf(entry, ' '), items.length);
    if (!item || items.some(({ id }) => id === item.id)) return undefined;
    items.push(item);
  }
  return items;
}

function itemOf(words: readonly string[], before: number): Aboard | undefined {
  const [kind, mass, ...rest] = words.filter((word) => word !== '');
  const kg = Number(mass?.replace(',', '.'));
  if (!describesKind(kind) || mass === undefined || !(kg > 0 && kg <= 2000)) return undefined;
  let item: Aboard = { id: `aboard-${before + 1}`, kind, mass: kg };
  for (const word of rest) {
    if (word === 'kg') continue;
    if (word === 'helm') item = { ...item, helm: true };
    else if (word.startsWith('#')) item = { ...item, id: unquoted(word.slice(1)) };
    else if (word.startsWith('"')) item = { ...item, name: unquoted(word) };
    else if (/^@[-+\d.e]+(?:\/[-+\d.e]+){1,2}$/.test(word)) {
      const [x, y, z] = word.slice(1).split('/').map(Number);
      if (![x, y, z ?? 0].every(Number.isFinite)) return undefined;
      item = { ...item, at: { x: x!, y: y!, ...(z !== undefined && { z }) } };
    } else if (word.startsWith('@') && word.length > 1) item = { ...item, station: unquoted(word.slice(1)) };
    else return undefined;
  }
  return item;
}

function describesKind(word: string | undefined): word is Aboard['kind'] {
  return word === 'adult' || word === 'child' || word === 'dog' || word === 'gear';
}

/** Bare where nothing in it parts words. */
function quoted(text: string): string {
  return /^[^\s;"/@#]+$/.test(text) ? text : JSON.stringify(text);
}

function unquoted(text: string): string {
  if (!text.startsWith('"')) return text;
  try {
    return String(JSON.parse(text));
  } catch {
    return text.replaceAll('"', '');
  }
}

/** Cuts a text at a sign, except within double quotes. */
function partsOf(text: string, sign: string): string[] {
  const parts = [''];
  let inside = false;
  let escaped = false;
  for (let at = 0; at < text.length; at++) {
    const character = text[at]!;
    if (character === '"' && !escaped) inside = !inside;
    escaped = character === '\\' && !escaped;
    if (character === sign && !inside) parts.push('');
    else parts[parts.length - 1] += character;
  }
  return parts;
}
