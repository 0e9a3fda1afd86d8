/** For the framed page: tells the page around it how high it is. */
export const FRAMED = `// On the framed page; name the site that may frame it.
new ResizeObserver(() => {
  parent.postMessage({ homelegHeight: document.documentElement.offsetHeight }, 'https://club.example');
}).observe(document.documentElement);`;

/** For the page around it. */
export const FRAMING = `// On the page with <iframe id="planner" title="Trip planner" src="https://boats.example/planner/">
const frame = document.getElementById('planner');
addEventListener('message', ({ origin, source, data }) => {
  if (origin !== 'https://boats.example' || source !== frame.contentWindow) return;
  if (data?.homelegHeight > 0) frame.style.height = Math.ceil(data.homelegHeight) + 'px';
});`;

/** One way to use the package in each framework. */
export const FRAMEWORKS = [
  [
    'React 19',
    `import 'homeleg/planner/define';
import type {} from 'homeleg/react';

<homeleg-planner units="metric" trip={trip}
  onhomeleg-verdict={(event) => setVerdict(event.detail.verdict)} />`,
  ],
  [
    'Vue 3',
    `// vite.config: vue({ template: { compilerOptions: { isCustomElement: (tag) => tag.startsWith('homeleg-') } } })
import 'homeleg/planner/define';
import type {} from 'homeleg/vue';

<homeleg-planner units="metric" :trip.prop="trip" @homeleg-verdict="told"></homeleg-planner>`,
  ],
  [
    'Svelte 5',
    `import 'homeleg/planner/define';
import type {} from 'homeleg/svelte';

<homeleg-planner units="metric" {trip} onhomeleg-verdict={(event) => (verdict = event.detail.verdict)}></homeleg-planner>`,
  ],
  [
    'Node',
    `import { planTrip, readTrip } from 'homeleg/core';

const trip = readTrip(JSON.parse(text));
const plan = trip.ok ? planTrip(trip.value, undefined) : trip;`,
  ],
] as const;
