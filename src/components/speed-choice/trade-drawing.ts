import { nothing, svg, type TemplateResult } from 'lit';
import { roundTicks } from '../curve-plot/round-ticks.ts';
import { linear } from '../curve-plot/scale.ts';
import type { Measures, StoreKind } from '../units/measures.ts';
import { speedWords as words } from '../words/en-further.ts';
import type { Frame, Mark, Marked } from './trade.ts';

/** Told apart by outline: diamond, disc, triangle, square, round their middle, 16 px across. */
const SHAPES: Record<Mark, string> = {
  present: 'M0-9L9 0L0 9L-9 0Z',
  thriftiest: 'M0-7.5A7.5 7.5 0 1 1 0 7.5A7.5 7.5 0 1 1 0-7.5Z',
  earliest: 'M0-9L8.5 6.5H-8.5Z',
  lowestRevs: 'M-7-7H7V7H-7Z',
};

export function markShape(mark: Mark): TemplateResult {
  return svg`<path class="shape ${mark}" d=${SHAPES[mark]} />`;
}

interface Picture {
  readonly width: number;
  readonly fontSize: number;
  readonly frame: Frame;
  readonly points: readonly Marked[];
  readonly reserve: number;
  /** s; undefined without a limit. */
  readonly allowed: number | undefined;
  readonly store: StoreKind;
  readonly measures: Measures;
}

const HEIGHT = 300;
/** Finest first: where the picture has no room for all of a row, the next coarser row is tried. */
const STEPS = [5, 10, 15, 30, 60, 120, 180, 360, 720].map((minutes) => minutes * 60);
/** The least spread of times drawn, as a factor. */
const SPREAD = 1.1;

/**
 * Time to the right, by its logarithm so that quick trips are not squeezed by crawling ones; what is left upwards. Speeds
 * as a line, the named ones as marks, the reserve hatched.
 */
export function tradeDrawing({ width, fontSize, frame, points, reserve, allowed, store, measures: m }: Picture) {
  const letters = Math.max(12, fontSize * 0.82);
  const [start, end, top, foot] = [letters * 4.2, width - 22, 14, HEIGHT - letters * 3.2];
  const times: [number, number] = [frame.times[0] / SPREAD, frame.times[1] * SPREAD];
  const along = linear([Math.log(times[0]), Math.log(times[1])], [start, end]);
  const x = (time: number) => along(Math.log(time));
  const high = frame.lefts[1] * 1.08;
  const y = linear([frame.lefts[0], high], [foot, top]);
  const shown = (left: number) => m.fromSi('amount', left, store);
  const lefts = roundTicks([shown(frame.lefts[0]), shown(high)], 5).map((tick) => m.toSi('amount', tick, store));
  const hours = ticks(times, x, letters * 4.4);
  const line = frame.drawn.map(({ time, left }, i) => `${i ? 'L' : 'M'}${px(x(time))} ${px(y(left))}`).join('');
  const floor = Math.min(y(Math.max(frame.lefts[0], 0)), foot);
  const rim = Math.max(y(reserve), top);
  const due = allowed !== undefined && allowed > times[0] && allowed < times[1] ? x(allowed) : undefined;
  return svg`
    <defs>
      <pattern id="hatch" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path class="hatch" d="M0 0V7" />
      </pattern>
    </defs>
    ${lefts.map(
      (left) => svg`<path class="rule" d="M${px(start)} ${px(y(left))}H${px(end)}" />
        <text class="tick" font-size=${letters} text-anchor="end" x=${px(start - 6)} y=${px(y(left) + letters * 0.35)}>${m.show('amount', left, store)}</text>`,
    )}
    ${hours.map(
      (time) => svg`<path class="rule" d="M${px(x(time))} ${px(foot)}v5" />
        <text class="tick" font-size=${letters} text-anchor="middle" x=${px(x(time))} y=${px(foot + letters + 7)}>${hoursText(time)}</text>`,
    )}
    <text class="tick" font-size=${letters} text-anchor="end" x=${px(end + 20)} y=${px(HEIGHT - 4)}>${words.axisTime}</text>
    <rect class="reserve" fill="url(#hatch)" x=${px(start)} y=${px(rim)} width=${px(end - start)} height=${px(Math.max(floor - rim, 0))} />
    <text class="tick strong" font-size=${letters} x=${px(start + 6)} y=${px(floor - 6)}>${words.reserve}</text>
    <path class="empty-line" d="M${px(start)} ${px(y(0))}H${px(end)}" />
    ${
      due === undefined
        ? nothing
        : svg`<path class="due" d="M${px(due)} ${px(top)}V${px(foot)}" />
          <text class="tick strong" font-size=${letters} text-anchor="end" x=${px(due - 5)} y=${px(top + letters)}>${words.due}</text>`
    }
    <path class="line" d=${line} />
    ${frame.drawn.map(({ time, left }) => svg`<circle class="dot" r="2.5" cx=${px(x(time))} cy=${px(y(left))} />`)}
    ${points
      .filter(({ time, left }) => Number.isFinite(time) && Number.isFinite(left))
      .map(({ marks, time, left }) => ({ marks, at: [x(time), y(left)] as const }))
      // The present choice lies on top where it is one of the named.
      .reverse()
      .map(
        ({ marks, at }) =>
          svg`<g transform="translate(${px(at[0])} ${px(at[1])})">${[...marks].reverse().map(markShape)}</g>`,
      )}
    ${labels(points, x, y, { letters, start, end, top, foot, due })}
  `;
}

interface Room {
  /** Where the line of the time allowed stands, px. */
  readonly due: number | undefined;
  readonly letters: number;
  readonly start: number;
  readonly end: number;
  readonly top: number;
  readonly foot: number;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly long: number;
}

/** A word at each mark: over, under or beside it, wherever none stands yet. */
function labels(
  points: readonly Marked[],
  x: (time: number) => number,
  y: (left: number) => number,
  { letters, start, end, top, foot, due }: Room,
) {
  const shown = points.filter(({ time, left }) => Number.isFinite(time) && Number.isFinite(left));
  const placed: Box[] = shown.map(({ time, left }) => ({ x: x(time) - 9, y: y(left) + letters * 0.4, long: 18 }));
  const dueLong = words.due.length * letters * 0.58;
  if (due !== undefined) placed.push({ x: due - 5 - dueLong, y: top + letters, long: dueLong });
  return shown.map(({ marks, time, left }) => {
    const text = marks.length > 2 ? words.allInPicture : marks.map((mark) => words.inPicture[mark]).join(', ');
    const long = text.length * letters * 0.58;
    const within = (from: number) => Math.min(Math.max(from, start + 2), end - long);
    const [px0, py0] = [x(time), y(left)];
    const places = [1, 2.1, 3.2].flatMap((far) => [
      { x: within(px0 - long / 2), y: py0 - 12 - (far - 1) * letters, long },
      { x: within(px0 - long / 2), y: py0 + 12 + far * letters * 0.9, long },
      { x: within(px0 + 14), y: py0 + letters * 0.35 + (far - 1) * letters, long },
    ]);
    const free = places.find(
      (place) =>
        place.y > top + letters * 0.8 && place.y < foot - 2 && !placed.some((other) => meet(place, other, letters)),
    );
    const place = free ?? places[0]!;
    placed.push(place);
    return svg`<text class="name" font-size=${letters} x=${px(place.x)} y=${px(place.y)}>${text}</text>`;
  });
}

function meet(a: Box, b: Box, letters: number): boolean {
  return Math.abs(a.y - b.y) < letters * 1.15 && a.x < b.x + b.long + 4 && b.x < a.x + a.long + 4;
}

/** Round times, no nearer to each other than `apart` px; coarser ones to the right, where they crowd. */
function ticks([from, to]: readonly [number, number], x: (time: number) => number, apart: number): number[] {
  const found: number[] = [];
  let time = from;
  for (;;) {
    const near = found.at(-1);
    const next = STEPS.map((step) => Math.ceil((time + 1) / step) * step).find((tick, i) => {
      const step = STEPS[i]!;
      return (near === undefined || x(tick) - x(near) >= apart) && x(tick + step) - x(tick) >= apart;
    });
    if (next === undefined || next > to) return found;
    found.push(next);
    time = next;
  }
}

/** "1:30" */
function hoursText(time: number): string {
  const minutes = Math.round(time / 60);
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')} h`;
}

const px = (value: number): string => value.toFixed(1);

export const TRADE_HEIGHT = HEIGHT;
