import { keepDrawnTrips } from './drawn-trips.ts';

keepDrawnTrips('trip-drawn-3', 3);
