import { ENTER, type Engine, SPACE, until } from './engine.ts';

/** What the planner makes of the same trip, to be compared between engines. */
export interface Figures {
  readonly verdict: string;
  readonly distance: number;
  readonly left: number;
  readonly leftLow: number;
  readonly check: { readonly verdict: string; readonly left: number };
}

/** Finds what a selector means through all shadow roots. */
const DEEP = `
  const all = (selector, from = document) => [...from.querySelectorAll(selector),
    ...[...from.querySelectorAll('*')].flatMap((each) => each.shadowRoot ? all(selector, each.shadowRoot) : [])];
  const planner = document.querySelector('homeleg-planner');`;

/** The same walk in every engine: an example, waypoints by keyboard, a reserve check, a tick that a reload keeps. */
export async function walk(engine: Engine, site: string): Promise<Figures> {
  const run = <T>(body: string, given?: unknown) => engine.run<T>(DEEP + body, given);
  await engine.open(site);
  await until('the planner stands on the start page', () =>
    run<boolean>(`return planner?.hasUpdated && all('select').length > 1`),
  );
  await run(`const list = all('select').find((each) => [...each.options].some(({ value }) => value === 'petrol-day'));
    list.value = 'petrol-day'; list.dispatchEvent(new Event('change', { bubbles: true, composed: true }));`);
  await until('an answer to the example', () =>
    run<boolean>(`return planner.plan?.payload && !planner.shadowRoot.querySelector('.unsettled')`),
  );
  const heading = await run<string>(
    `return all('#answer homeleg-answer')[0].shadowRoot.querySelector('h2').textContent.trim()`,
  );
  if (heading === '') throw new Error('the answer has no heading');

  const count = () => run<number>('return planner.trip.route.waypoints.length');
  const before = await count();
  await until('the form for a waypoint', () =>
    run<boolean>(`const [field] = all('input#place'); field?.focus(); return field !== undefined`),
  );
  await engine.press(...'46.02, -32.01', ENTER);
  await until('a waypoint typed', async () => (await count()) === before + 1);
  const figures = await until('a plan with it', () =>
    run<Omit<Figures, 'check'>>(`const { plan } = planner;
      if (!plan || planner.shadowRoot.querySelector('.unsettled')) return null;
      return { verdict: plan.verdict, distance: plan.distance, left: plan.left.median, leftLow: plan.left.low ?? plan.left.median }`),
  );
  await until('the map', () =>
    run<boolean>(
      `const [frame] = all('#frame'); frame?.scrollIntoView({ block: 'center' }); frame?.focus(); return frame?.classList.contains('leaflet-container')`,
    ),
  );
  await engine.press(ENTER);
  await until('a waypoint set on the map by Enter', async () => (await count()) === before + 2);

  await run(
    `await import('/embed/reserve-check.js'); document.body.append(document.createElement('homeleg-reserve-check'))`,
  );
  await until('the reserve check', () =>
    run<boolean>(`const [field] = all('input#weights'); field?.focus(); return field !== undefined`),
  );
  await engine.press(...'80, 75');
  const check = await until('an answer of the reserve check', () =>
    run<Figures['check']>(
      `const { plan } = document.querySelector('homeleg-reserve-check'); return plan && { verdict: plan.verdict, left: plan.left.median }`,
    ),
  );

  await engine.open(`${site}checklists/before-launch/`);
  const ticked = `const [box] = all('input[type=checkbox]'); `;
  await until('the checklist', () => run<boolean>(`${ticked} box?.focus(); return box !== undefined`));
  await engine.press(SPACE);
  await until('a tick', () => run<boolean>(`${ticked} return box.checked`));
  await engine.open(`${site}checklists/before-launch/`);
  await until('the tick after a reload', () => run<boolean>(`${ticked} return box?.checked`));
  return { ...figures, check };
}
