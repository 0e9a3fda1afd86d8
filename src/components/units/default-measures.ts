import { measuresFor } from './measures.ts';

/** What an element shows until its parent says otherwise. */
export const NAUTICAL = measuresFor('nautical', 'en');
