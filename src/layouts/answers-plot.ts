/** Answers to trips that take so much of what they may with the reserve whole. */
export interface Answered {
  readonly from: number;
  readonly to: number;
  readonly trips: number;
  readonly go: number;
  readonly marginal: number;
  readonly noGo: number;
}

const WIDTH = 340;
const HEIGHT = 240;
const FRAME = 44;
const EDGE = 8;

/** A bar for every so much a trip takes, as high as all of its trips, split by answer from the ground: yes, in doubt, no. */
export function answersPlotted(bins: readonly Answered[]) {
  const [low, high] = [bins[0]!.from, bins.at(-1)!.to];
  const x = (takes: number): number => round(FRAME + ((takes - low) / (high - low)) * (WIDTH - FRAME - EDGE));
  const y = (share: number): number => round(HEIGHT - FRAME - share * (HEIGHT - FRAME - EDGE));
  const bars = bins
    .filter(({ trips }) => trips > 0)
    .map(({ from, to, trips, go, marginal }) => {
      const [yes, doubt] = [go / trips, (go + marginal) / trips];
      const [left, width] = [round(x(from) + 1), round(x(to) - x(from) - 2)];
      const part = (answer: 'go' | 'doubt' | 'stop', bottom: number, top: number) => ({
        answer,
        left,
        width,
        top: y(top),
        height: round(y(bottom) - y(top)),
      });
      return [part('go', 0, yes), part('doubt', yes, doubt), part('stop', doubt, 1)].filter(({ height }) => height > 0);
    });
  return {
    width: WIDTH,
    height: HEIGHT,
    frame: FRAME,
    edge: EDGE,
    x,
    y,
    bars: bars.flat(),
    ticks: [low, ...bins.map(({ to }) => to)].filter((_, i) => i % 2 === 0),
  };
}

function round(place: number): number {
  return Math.round(place * 10) / 10;
}
