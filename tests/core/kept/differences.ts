import type { Plain } from './plain.ts';

/** Processors differ in the last digits of a sine; kept figures have nine. */
const RELATIVE = 1e-7;
const ABSOLUTE = 1e-10;

/** Where what is kept and what is found now differ, each with its path and both values; `most` of them. */
export function differences(kept: Plain, now: Plain, path = '', most = 8): readonly string[] {
  if (typeof kept === 'number' && typeof now === 'number') {
    const close = Math.abs(kept - now) <= RELATIVE * Math.max(Math.abs(kept), Math.abs(now)) + ABSOLUTE;
    return close ? [] : [`${path}: kept ${kept}, now ${now}`];
  }
  if (isObject(kept) && isObject(now) && Array.isArray(kept) === Array.isArray(now)) {
    const found: string[] = [];
    for (const key of new Set([...Object.keys(kept), ...Object.keys(now)])) {
      const inner = Array.isArray(kept) ? `${path}[${key}]` : path === '' ? key : `${path}.${key}`;
      if (!Object.hasOwn(now, key)) found.push(`${inner}: kept ${short(kept[key]!)}, now missing`);
      else if (!Object.hasOwn(kept, key)) found.push(`${inner}: not kept, now ${short(now[key]!)}`);
      else found.push(...differences(kept[key]!, now[key]!, inner, most - found.length));
      if (found.length >= most) break;
    }
    return found;
  }
  return kept === now ? [] : [`${path}: kept ${short(kept)}, now ${short(now)}`];
}

function isObject(value: Plain): value is { readonly [key: string]: Plain } {
  return value !== null && typeof value === 'object';
}

function short(value: Plain): string {
  const text = JSON.stringify(value);
  return text.length > 100 ? `${text.slice(0, 97)}...` : text;
}
