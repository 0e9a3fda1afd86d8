/** What reading and writing places with streams takes; loaded once somebody brings or keeps some. */

export { forecastHeadings as tableHeadings } from '../../core/files/forecast-table.ts';
export { readStreamPlaces, saysStreamPlaces, streamPlacesText } from '../../core/files/stream-places-file.ts';
export { readStreamTable } from '../../core/files/stream-table.ts';
export { streamGuess } from './stream-guess.ts';
