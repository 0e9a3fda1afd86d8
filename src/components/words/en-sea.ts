import { spoken } from './spoken.ts';

export const seaWords = spoken('seaWords', {
  fromWind: 'From the wind',
  swell: 'Swell from outside',
  swellHint: 'As forecast; 0 for none. Left empty it counts as not known where the water is open.',
  worked: 'Worked out for each leg from the wind and the open water upwind of it. Look at the sea before you go.',
  needsWind: 'Needs the wind; until then the sea counts as not known.',
  needsWaters: 'Needs local waters; without them the sea counts as not known.',
});
