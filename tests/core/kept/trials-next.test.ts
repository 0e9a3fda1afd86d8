import { fitTrials } from '../../../src/core/trials/fit.ts';
import { candidateRuns, helpfulRuns } from '../../../src/core/trials/next-run.ts';
import { type DayOut, runSheet } from '../../../src/core/trials/run-sheet.ts';
import { keeping } from './keeping.ts';
import { evidences, loads } from './made-evidence.ts';

const named = [
  { name: 'alone', load: loads.alone },
  { name: 'laden', load: loads.laden },
];

const sheet = (name: string, day: Omit<DayOut, 'loads'>) => () => {
  const trials = evidences[name]!;
  return runSheet(trials, fitTrials(trials), { ...day, loads: named });
};

const next = (name: string, setups: readonly string[]) => () => {
  const trials = evidences[name]!;
  const fit = fitTrials(trials);
  const candidates = candidateRuns(trials, fit, setups, [loads.alone, loads.laden]);
  const question = { setup: setups[0]!, load: loads.laden, speeds: [2, 6.5] };
  return helpfulRuns(trials, fit, question, candidates).map(({ candidate, before, after }) => ({
    setup: candidate.setup,
    load: candidate.load.items.length,
    speed: candidate.speed,
    before,
    after,
  }));
};

keeping('trials-next', {
  'a morning on the water': sheet('two propellers and two engines', { setups: ['usual', 'fine'], time: 7200 }),
  'a day on the water with two propellers': sheet('two propellers and two engines', {
    setups: ['fine', 'usual', 'small'],
    time: 12_000,
    questions: [
      { setup: 'fine', load: loads.alone, speeds: [6, 8] },
      { setup: 'usual', load: loads.laden, speeds: [2, 7] },
    ],
  }),
  'an hour, one question': sheet('six runs and a refill', {
    setups: ['usual'],
    time: 3600,
    questions: [{ setup: 'usual', load: loads.laden, speeds: [6, 7] }],
  }),
  'a day with nothing known yet': sheet('no run at all', { setups: ['usual'], time: 5000 }),
  'a quarter of an hour': sheet('one run', { setups: ['usual'], time: 900 }),
  'an electric launch': sheet('an electric launch charged at the socket', { setups: ['usual'], time: 4000 }),
  'the next run of two propellers': next('two propellers and two engines', ['fine', 'usual']),
  'the next run of the launch': next('an electric launch charged at the socket', ['usual']),
});
