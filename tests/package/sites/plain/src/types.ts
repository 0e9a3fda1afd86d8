import 'homeleg/planner/define';
import { type Plan, planTrip, readTrip, type Trip } from 'homeleg/core';
import type { Planner } from 'homeleg/planner';

const planner: Planner = document.createElement('homeleg-planner');
planner.units = 'metric';
// @ts-expect-error There is no such unit system.
planner.units = 'cubits';

planner.addEventListener('homeleg-plan', ({ detail }) => {
  const plan: Plan | undefined = detail.plan;
  const trip: Trip = detail.trip;
  console.log(plan?.verdict, trip.name);
});

const read = readTrip({});
if (read.ok) {
  const planned = planTrip(read.value, undefined);
  if (planned.ok) console.log(planned.value.left.median);
}
