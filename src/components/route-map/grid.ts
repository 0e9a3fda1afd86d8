/** Spacings that read well, in minutes of arc. */
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1200, 1800];

/** Minutes between grid lines so that a height of so many degrees has about `lines` of them. */
export function gridStep(height: number, lines: number): number {
  return STEPS.find((step) => (height * 60) / step <= lines) ?? STEPS.at(-1)!;
}

/** Values of a grid from one side to the other, degrees. */
export function gridValues(from: number, to: number, stepMinutes: number): number[] {
  const values: number[] = [];
  for (let i = Math.ceil((from * 60) / stepMinutes); i * stepMinutes <= to * 60; i++) {
    values.push((i * stepMinutes) / 60);
  }
  return values;
}

/** "46°02′N", with tenths where the grid has them. */
export function gridLabel(degrees: number, axis: 'lat' | 'lon', stepMinutes: number): string {
  const turn = axis === 'lon' ? ((((degrees + 180) % 360) + 360) % 360) - 180 : degrees;
  const tenths = Math.round(Math.abs(turn) * 600);
  const letter = tenths === 0 ? '' : (axis === 'lat' ? 'NS' : 'EW')[Number(turn < 0)];
  const minutes = ((tenths % 600) / 10).toFixed(stepMinutes < 1 ? 1 : 0);
  const width = stepMinutes < 1 ? 4 : 2;
  return `${Math.floor(tenths / 600)}°${stepMinutes < 60 ? `${minutes.padStart(width, '0')}′` : ''}${letter}`;
}
