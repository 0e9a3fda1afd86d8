import { changes } from '../../../src/core/compare/changes.ts';
import { keeping } from './keeping.ts';
import { boats, withLoad } from './made-boats.ts';

const asked = { cruise: 6.5, crewMove: 0.4, trimDeg: 4 };

keeping('compare-changes', {
  'a catamaran changed': () => changes(withLoad(...boats.catamaran!), asked),
  'one with a small engine changed': () =>
    changes(withLoad(...boats['catamaran with a small engine']!), { ...asked, cruise: 3 }),
});
