/** What the package publishes of the computation: `planTrip`, the doors in front of it, and the shapes they work with. */
export { loadTable } from './compare/load-table.ts';
export { ranked, suited } from './compare/suit.ts';
export type {
  Battery,
  Calibration,
  Craft,
  Drive,
  ElectricDrive,
  Hull,
  PetrolDrive,
  Plate,
  Position,
  Propeller,
  Station,
  Store,
  Tank,
} from './craft/shapes.ts';
export { craftFrom, engines, hulls, stores } from './files/catalogue.ts';
export { readFleet, readFleetText, writeFleet } from './files/fleet-file.ts';
export { readGpx } from './files/gpx.ts';
export { gpxOfRoute } from './files/gpx-writer.ts';
export { readProfile, writeProfile } from './files/profile-file.ts';
export { geoJsonOfRoute } from './files/route-geojson.ts';
export { readShareLink, writeShareLink } from './files/share-link.ts';
export { readTrip, readTripText } from './files/trip-schema.ts';
export { readWaters, readWatersText } from './files/waters-file.ts';
export type { Fleet, HireBoat, HireRoute } from './hire/shapes.ts';
export type { Aboard, Load } from './load/shapes.ts';
export type { LatLon, Route, WatersFile, Waypoint } from './route/shapes.ts';
export { prepareWaters, type Waters } from './route/waters.ts';
export { calibrated } from './trials/calibrated.ts';
export { fitTrials } from './trials/fit.ts';
export type { BoatProfile, Run, Trials } from './trials/shapes.ts';
export { fromHere, type Here } from './trip/from-here.ts';
export { planInSteps, planTrip } from './trip/plan-trip.ts';
export { rangeOutline } from './trip/range-outline.ts';
export type {
  Assumption,
  Fix,
  LegPlan,
  Payload,
  Plan,
  Policy,
  Reason,
  ReserveRule,
  Trip,
  Verdict,
} from './trip/shapes.ts';
export { startTimes } from './trip/start-times.ts';
export { tightened } from './trip/tightened.ts';
export type { Problem, Result } from './units/result.ts';
export type { Conditions, Stream, Tide, Wind } from './water/shapes.ts';
