import { turn } from '../turn.ts';

/** Parts of the desk that are not looked at first, fetched one after the other once the first is on the screen. */
const PARTS: readonly (() => Promise<unknown>)[] = [
  () => import('./hand-over.ts'),
  () => import('./out-list.ts'),
  () => import('./morning-form.ts'),
  () => import('./fleet-card.ts'),
  () => import('./desk-data.ts'),
  () => import('./day-log.ts'),
  () => import('./season-card.ts'),
];

let coming: Promise<boolean> | undefined;

/** Fetches all parts, once for the page; whether they are there. Without a network they are asked for again next time. */
export function lateParts(): Promise<boolean> {
  coming ??= fetchAll();
  return coming;
}

async function fetchAll(): Promise<boolean> {
  try {
    for (const part of PARTS) {
      await part();
      await turn();
    }
    return true;
  } catch {
    coming = undefined;
    return false;
  }
}
