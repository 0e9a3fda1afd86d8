/** The tube the bar is drawn as: px, ends rounded by `radius`. */
export interface Tube {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly radius: number;
}

/** The part of the tube between two places along it, as a closed path; its rounded ends stay inside the tube. */
export function slice(tube: Tube, from: number, to: number): string {
  const { left, top, width, height } = tube;
  const right = left + width;
  const r = Math.min(tube.radius, height / 2, width / 2);
  const start = Math.min(Math.max(from, left), right);
  const end = Math.min(Math.max(to, start), right);
  /** How far the rim has come down from the top edge here. */
  const rim = (x: number) => {
    const into = Math.min(x - left, right - x);
    return into >= r ? 0 : r - Math.sqrt(Math.max(r * r - (r - into) ** 2, 0));
  };
  const at = (x: number, low: boolean) => `${px(x)} ${px(low ? top + height - rim(x) : top + rim(x))}`;
  const bend = `A${px(r)} ${px(r)} 0 0 1 `;
  const step = (x: number, round: boolean, low: boolean) => (round ? bend : 'L') + at(x, low);

  const a = Math.min(Math.max(left + r, start), end);
  const b = Math.min(Math.max(right - r, start), end);
  return [
    `M${at(start, false)}`,
    step(a, start < left + r, false),
    step(b, false, false),
    step(end, end > right - r, false),
    step(end, false, true),
    step(b, end > right - r, true),
    step(a, false, true),
    step(start, start < left + r, true),
    'Z',
  ].join('');
}

/**
 * Slanted lines `apart` px apart over the part of the tube between two places, as one path, cut at its rounded rim.
 * They rise to the right, or fall.
 */
export function hatch(tube: Tube, from: number, to: number, apart: number, rising = true): string {
  const { top, height } = tube;
  const start = Math.max(from, tube.left);
  const end = Math.min(to, tube.left + tube.width);
  const middle = top + height / 2;
  let path = '';
  // Lines at 45 degrees on a grid tied to the drawing, so that neighbouring boxes match.
  for (let c = Math.ceil(start / apart) * apart; c < end + height; c += apart) {
    const point = (x: number): Point => [x, rising ? top + c - x : top + height - c + x];
    const low = Math.max(c - height, start);
    const high = Math.min(c, end);
    if (high <= low) continue;
    const within = [c - height / 2, (low + high) / 2, low, high].find(
      (x) => x >= low && x <= high && covers(tube, point(x)),
    );
    if (within === undefined) continue;
    const [x0, y0] = point(lastInside(tube, point, within, low));
    const [x1, y1] = point(lastInside(tube, point, within, high));
    if (Math.abs(x1 - x0) > 1 && Math.min(y0, y1) < middle + height) path += `M${px(x0)} ${px(y0)}L${px(x1)} ${px(y1)}`;
  }
  return path;
}

/** Two wavy edges across a bar at `x`, to say that a piece of it is left out; and the gap between them. */
export function tear(x: number, top: number, height: number): { readonly gap: string; readonly edges: string } {
  const swing = height / 8;
  const wave = (left: number, down: boolean) => {
    const sign = down ? 1 : -1;
    const bow = `q${px(swing)} ${px((sign * height) / 4)} 0 ${px((sign * height) / 2)}q${px(-swing)} ${px((sign * height) / 4)} 0 ${px((sign * height) / 2)}`;
    const back = `q${px(-swing)} ${px((sign * height) / 4)} 0 ${px((sign * height) / 2)}q${px(swing)} ${px((sign * height) / 4)} 0 ${px((sign * height) / 2)}`;
    return { start: `${px(left)} ${px(down ? top : top + height)}`, curve: down ? bow : back };
  };
  const one = wave(x - 3, true);
  const two = wave(x + 3, true);
  const up = wave(x + 3, false);
  return {
    gap: `M${one.start}${one.curve}L${up.start}${up.curve}Z`,
    edges: `M${one.start}${one.curve}M${two.start}${two.curve}`,
  };
}

type Point = readonly [x: number, y: number];

function covers({ left, top, width, height, radius }: Tube, [x, y]: Point): boolean {
  const r = Math.min(radius, height / 2, width / 2);
  const dx = Math.max(left + r - x, x - (left + width - r), 0);
  const dy = Math.max(top + r - y, y - (top + height - r), 0);
  return dx * dx + dy * dy <= r * r + 1e-6 && dx <= r && dy <= r;
}

/** Halves the way from a place inside the tube to another until the rim is found, to 0.1 px or so. */
function lastInside(tube: Tube, point: (x: number) => Point, inside: number, outside: number): number {
  if (covers(tube, point(outside))) return outside;
  let [a, b] = [inside, outside];
  for (let i = 0; i < 10; i++) {
    const x = (a + b) / 2;
    if (covers(tube, point(x))) a = x;
    else b = x;
  }
  return a;
}

function px(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}
