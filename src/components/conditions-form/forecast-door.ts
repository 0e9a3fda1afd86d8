/** What reading a forecast takes; loaded once somebody brings one. */
export { forecastHeadings, readForecastTable } from '../../core/files/forecast-table.ts';
export { aroundTrip } from './around-trip.ts';
export { forecastGuess } from './forecast-guess.ts';
