import { secondsOf } from '../../core/water/clock.ts';
import type { Conditions } from '../../core/water/shapes.ts';
import type { Measures } from '../units/measures.ts';
import { compassPoint } from '../words/en-compass.ts';
import { dayWords as words } from '../words/en-day.ts';
import { dayAndClock, offsetText, placeClock } from './place-clock.ts';

/** Rows of a forecast that are told one by one. */
const MOST_ROWS = 12;

/** What was given about the day and what was not, a sentence each, for paper and messages. */
export function conditionsLines(conditions: Conditions, m: Measures): readonly string[] {
  const missing = [
    conditions.departure === undefined && words.names.departure,
    conditions.wind === undefined && words.names.wind,
    conditions.stream === undefined && words.names.stream,
    conditions.sea === undefined && conditions.wind === undefined && words.names.sea,
  ].filter((name) => name !== false);
  return [
    ...departureLine(conditions, m),
    ...windLine(conditions, m),
    ...streamLines(conditions, m),
    ...seaLine(conditions, m),
    ...(missing.length > 0 ? [words.unknown(new Intl.ListFormat(m.lang).format(missing))] : []),
  ];
}

function departureLine({ departure, timezone }: Conditions, m: Measures): string[] {
  if (departure === undefined) return [];
  const clock = placeClock({ timezone, departure });
  return [
    words.departure(`${dayAndClock(departure, clock, m.lang)} (${offsetText(clock.offsetAt(secondsOf(departure)))})`),
  ];
}

function windLine({ wind, departure, timezone }: Conditions, m: Measures): string[] {
  if (wind === undefined) return [];
  if (wind === 'calm') return [words.calm];
  const from = (deg: number) => `${m.bearing(deg)} (${compassPoint(deg)})`;
  if ('speed' in wind) return [words.wind(m.show('speed', wind.speed), from(wind.fromDeg))];
  const clock = placeClock({ timezone, departure });
  const sorted = [...wind.forecast].sort((a, b) => secondsOf(a.time) - secondsOf(b.time));
  const rows = sorted
    .slice(0, MOST_ROWS)
    .map(({ time, fromDeg, speed, gust }) =>
      words.forecastRow(
        dayAndClock(time, clock, m.lang),
        m.show('speed', speed),
        compassPoint(fromDeg),
        gust === undefined ? '' : m.show('speed', gust),
      ),
    );
  const rest = sorted.length - MOST_ROWS;
  return [words.forecast([...rows, ...(rest > 0 ? [words.more(rest)] : [])].join('; '))];
}

function streamLines({ stream, tide, departure, timezone }: Conditions, m: Measures): string[] {
  const lines: string[] = [];
  if (stream === 'slack') lines.push(words.slack);
  else if (stream === 'by-tide') lines.push(words.byTide);
  else if (stream) lines.push(words.stream(m.show('speed', stream.rate), m.bearing(stream.setDeg)));
  if (tide) {
    const time = dayAndClock(tide.highWater, placeClock({ timezone, departure: departure ?? tide.highWater }), m.lang);
    const { highWaterHeight: height } = tide;
    const high = height === undefined ? '' : m.show('length', height);
    lines.push(words.tide(tide.port, time, high, m.show('length', tide.range)));
  }
  return lines;
}

function seaLine({ sea }: Conditions, m: Measures): string[] {
  if (sea === undefined) return [];
  if (sea === 'calm') return [words.flat];
  if ('height' in sea) return [words.height(m.show('length', sea.height))];
  return [sea.swell === 0 ? words.noSwell : words.swell(m.show('length', sea.swell))];
}
