import { spoken } from './spoken.ts';

/** The day in lines, for paper and messages. */
export const dayWords = spoken('dayWords', {
  title: 'The day',
  departure: (text: string) => `Departure ${text}.`,
  wind: (speed: string, from: string) => `Wind ${speed} from ${from}.`,
  calm: 'Calm.',
  forecast: (rows: string) => `Wind by time: ${rows}.`,
  forecastRow: (time: string, speed: string, from: string, gust: string) =>
    `${time} ${speed} from ${from}${gust && `, gusts ${gust}`}`,
  more: (n: number) => `and ${n} more`,
  stream: (rate: string, set: string) => `Stream ${rate} towards ${set}.`,
  slack: 'Slack water.',
  byTide: 'Streams by place and tide, indicative.',
  tide: (port: string, time: string, height: string, range: string) =>
    `High water at ${port} ${time}${height && `, ${height}`}, range ${range}.`,
  flat: 'Flat sea.',
  height: (height: string) => `Waves of ${height}.`,
  swell: (height: string) => `Waves worked out from the wind, with a swell of ${height}.`,
  noSwell: 'Waves worked out from the wind, no swell.',
  unknown: (names: string) => `Not given: ${names}.`,
  names: { departure: 'departure', wind: 'wind', stream: 'stream', sea: 'sea' },
});
