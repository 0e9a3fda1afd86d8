/** Run apart with little memory: every door meets every hostile document; says how many, and what took longest. */
import { doors } from './doors.ts';
import { hostile } from './hostile.ts';

let longest = { ms: 0, what: '' };
let met = 0;
for (const door of doors) {
  for (const [what, text] of hostile()) {
    const start = performance.now();
    const result = door.read(text);
    if (result.ok) door.use(result.value as never);
    const ms = performance.now() - start;
    if (ms > longest.ms) longest = { ms, what: `${door.name}: ${what}` };
    met++;
  }
}
console.log(JSON.stringify({ met, longest }));
