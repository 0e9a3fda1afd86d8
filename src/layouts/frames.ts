import { escaped } from './snippet.ts';

/** For the framed page: tells the page around it how high it is. The planner does so itself with `tell-size`. */
export const FRAMED = `// On the framed page; the planner needs no script for it, only tell-size.
new ResizeObserver(() => {
  const height = document.documentElement.offsetHeight;
  parent.postMessage({ type: 'homeleg-size', height }, '*');
}).observe(document.documentElement);
`;

/** For the page around it. */
export const FRAMING = `// On the page around it: each frame gets the height that the page in it tells of.
addEventListener('message', ({ source, data }) => {
  if (data?.type !== 'homeleg-size' || !(data.height > 0)) return;
  for (const frame of document.querySelectorAll('iframe')) {
    if (frame.contentWindow === source) frame.style.height = Math.ceil(data.height) + 'px';
  }
});
`;

/** Mark-up of a frame that waits until it comes near. */
export function frameOf(title: string, src: string): string {
  return `<iframe title="${escaped(title)}" src="${escaped(src)}" loading="lazy"></iframe>`;
}

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
