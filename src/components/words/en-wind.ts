import { spoken } from './spoken.ts';

export const windWords = spoken('windWords', {
  title: 'Wind by time',
  time: 'Time',
  from: 'From',
  fromHint: 'degrees or SW',
  speed: (unit: string) => `Wind (${unit})`,
  gust: (unit: string) => `Gusts (${unit})`,
  cell: (name: string, row: number) => `${name}, row ${row}`,
  remove: (row: number) => `Remove row ${row}`,
  add: 'Add a row',
  sort: 'Sort by time',
  empty: 'No wind is told yet. Add rows, or take a forecast from a file.',
  noTime: 'A date and time, please.',
  noFrom: 'Degrees from 0 to 360, or a point such as SW.',
  noSpeed: 'A figure, please.',
  tooMuch: (most: string) => `At most ${most}.`,
  gustBelow: 'Gusts are not below the mean wind.',
  unfinished: (n: number) =>
    n === 1 ? 'One row is not filled in and does not count yet.' : `${n} rows are not filled in and do not count yet.`,
  twice: 'Two rows tell the same time: the stronger wind counts.',
  covers: (until: string) => `Reaches until ${until} and covers the trip.`,
  reaches: (from: string, until: string) => `Reaches from ${from} until ${until}.`,
  noDeparture: 'Give a departure: without it none of this can be counted.',
  startsLate: (from: string) =>
    `It begins only at ${from}, after the departure: before that the wind counts as not known and against you.`,
  endsEarly: (until: string) =>
    `It ends at ${until}, before the trip does: after that the wind counts as not known and against you.`,
  gap: (until: string) => `There is a gap of more than 12 hours before ${until}: in it the wind counts as not known.`,
  meanCounts: 'The mean wind is what counts in the plan; gusts are told where they are strong.',
  all: (n: number) => `Show all ${n} rows`,
  import: 'Take from a file or the clipboard',
  fetch: 'Fetch the forecast for the start',
  fetching: 'Fetching',
  fetchCancel: 'Stop',
  fetchNote: (host: string) => `Asks ${host}; the start of the route goes there, rounded to about a kilometre.`,
  fetchNoPlace: 'Draw the route first: the forecast is asked for its start.',
});
