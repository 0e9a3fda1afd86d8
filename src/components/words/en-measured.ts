import { spoken } from './spoken.ts';

/** Words about a boat that has been measured. */
export const measuredWords = spoken('measuredWords', {
  title: (count: number) =>
    count === 0
      ? 'No run of this boat counts yet: it is planned as unmeasured.'
      : `Measured boat: ${count} ${count === 1 ? 'run or refill counts' : 'runs and refills count'}.`,
  otherHull: (name: string) =>
    `The trials that came with this trip are of another hull (${name}). They do not count for this one.`,
  evidence: ({ by, day }: { by: string | undefined; day: string | undefined }) =>
    `${by ? `Measured by ${by}` : 'Nobody said who measured'}${day ? `, last on ${day}` : ', no date given'}.`,
  tried: ([leastMass, mostMass]: readonly [string, string], [leastSpeed, mostSpeed]: readonly [string, string]) =>
    `Tried all-up at ${leastMass === mostMass ? mostMass : `${leastMass} to ${mostMass}`}, ${leastSpeed === mostSpeed ? `at ${mostSpeed}` : `from ${leastSpeed} to ${mostSpeed}`}; less sure beyond.`,
  setAside: (count: number) =>
    count === 1
      ? 'One run contradicts the others and was set aside.'
      : `${count} runs contradict the others and were set aside.`,
  forget: 'Plan without these trials',
  forgotten: 'The trials no longer count. The boat is planned as unmeasured.',
});
