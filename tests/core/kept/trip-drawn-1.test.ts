import { keepDrawnTrips } from './drawn-trips.ts';

keepDrawnTrips('trip-drawn-1', 1);
