/** Longest name, label or note in a file, characters. */
export const TEXT_LENGTH = 200;
