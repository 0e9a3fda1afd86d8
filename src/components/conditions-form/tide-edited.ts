import type { Tide } from '../../core/water/shapes.ts';

/** The tide of the day, or none. */
export type TideEdited = CustomEvent<{ tide: Tide | undefined }>;
