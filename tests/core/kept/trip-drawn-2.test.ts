import { keepDrawnTrips } from './drawn-trips.ts';

keepDrawnTrips('trip-drawn-2', 2);
