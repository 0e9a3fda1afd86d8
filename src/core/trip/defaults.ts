/** Warm-up, casting off and coming alongside together, s (common practice, no source: 5 to 10 minutes). */
export const MANOEUVRING = 450;

/** Sailed over drawn length (common practice, no source: corners and headlands add 2 to 10 %). */
export const DRAWN_FACTOR = 1.05;
/** Water a small boat wants under way, m: hull 0.2, leg and propeller 0.3, and 0.3 under them (common practice, no source). */
export const DEPTH_WANTED = 0.8;
