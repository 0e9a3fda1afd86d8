/** A class of the sea-state scale; heights are significant, m. */
export interface SeaState {
  readonly code: number;
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

/** WMO code table 3700, from memory. */
const SEA_STATES: readonly SeaState[] = [
  { code: 0, name: 'calm (glassy)', from: 0, to: 0 },
  { code: 1, name: 'calm (rippled)', from: 0, to: 0.1 },
  { code: 2, name: 'smooth', from: 0.1, to: 0.5 },
  { code: 3, name: 'slight', from: 0.5, to: 1.25 },
  { code: 4, name: 'moderate', from: 1.25, to: 2.5 },
  { code: 5, name: 'rough', from: 2.5, to: 4 },
  { code: 6, name: 'very rough', from: 4, to: 6 },
  { code: 7, name: 'high', from: 6, to: 9 },
  { code: 8, name: 'very high', from: 9, to: 14 },
  { code: 9, name: 'phenomenal', from: 14, to: Infinity },
];

/** Class of a significant height, m; a height on a limit belongs to the lower class, as the table says. */
export function seaStateOf(height: number): SeaState {
  return SEA_STATES.find(({ to }) => height <= to) ?? SEA_STATES[9]!;
}

/** The next class up; the last stays. */
export function oneUp(state: SeaState): SeaState {
  return SEA_STATES[state.code + 1] ?? state;
}
