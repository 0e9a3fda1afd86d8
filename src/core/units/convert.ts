/** Factors from a unit to SI; multiply to go in, divide to come out. Exact by definition where no source stands. */
export const KNOT = 1852 / 3600;
export const KMH = 1 / 3.6;
export const MPH = 1609.344 / 3600;
export const NAUTICAL_MILE = 1852;
export const STATUTE_MILE = 1609.344;
export const FOOT = 0.3048;
export const INCH = 0.0254;
export const POUND = 0.45359237;
/** Mechanical horsepower, W. */
export const HORSEPOWER = 745.699872;
export const WATT_HOUR = 3600;
export const MINUTE = 60;
export const HOUR = 3600;
/** US liquid gallon in litres. */
export const US_GALLON_L = 3.785411784;
/** Imperial gallon in litres. */
export const IMPERIAL_GALLON_L = 4.54609;
export const DEGREE = Math.PI / 180;
/** m/s of a force of the Beaufort scale to the power of 1.5: the middle of each class (WMO, from memory). */
export const BEAUFORT_WIND = 0.836;
