/** Height of the lowest point of the edge over still water that a small open boat keeps at rest, m (common practice, no source). */
export const LEAST_FREEBOARD = 0.1;

/** Share of the tubes under water at rest (common practice, no source). */
export const TUBES_USED = 0.5;
