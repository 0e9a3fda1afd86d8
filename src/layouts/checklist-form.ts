import { concern } from '../components/checklist/concern.ts';
import { holdingOf, keptTrip, PLANNER_KEY } from '../components/checklist/kept-trip.ts';
import type { Condition, Holding } from '../components/checklist/shapes.ts';
import { TickKeeper } from '../components/checklist/tick-keeper.ts';
import { tripSaid } from '../components/checklist/trip-said.ts';
import { checklistWords as words } from '../components/words/en-checklist.ts';

/** Keeps the ticks of a list, counts them, takes a reset back, and fits the list to the trip kept by the planner. Without it the list still ticks. */
export function enliven(form: HTMLFormElement): void {
  const part = <T extends HTMLElement>(name: string) => form.querySelector<T>(`[data-${name}]`)!;
  const boxes = [...form.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')];
  const status = part('status');
  const bar = form.querySelector('progress')!;
  const undo = part('undo');
  const keeper = new TickKeeper(form.dataset.list);

  function show(): void {
    const shown = boxes.filter((box) => !box.closest('li')!.hidden);
    const done = shown.filter((box) => box.checked).length;
    part('count').textContent = words.done(done, shown.length);
    bar.max = shown.length;
    bar.value = done;
    undo.hidden = !keeper.undoable;
  }

  function put(): void {
    for (const box of boxes) box.checked = keeper.ticked.has(box.name);
  }

  put();
  if (keeper.oldSince !== undefined) {
    const day = new Intl.DateTimeFormat(document.documentElement.lang, { dateStyle: 'long', timeStyle: 'short' });
    status.textContent = words.old(day.format(keeper.oldSince));
  }

  form.addEventListener('change', ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    status.textContent = keeper.tick(target.name, target.checked) ? '' : words.notKept;
    show();
  });

  form.addEventListener('reset', () => {
    keeper.clear();
    // The boxes are cleared only after this event.
    setTimeout(() => {
      status.textContent = words.cleared;
      put();
      show();
    });
  });

  undo.addEventListener('click', () => {
    keeper.takeBack();
    put();
    status.textContent = words.back;
    show();
    form.querySelector<HTMLElement>('[type="reset"]')?.focus();
  });

  part('print').addEventListener('click', () => window.print());
  for (const scripted of form.querySelectorAll<HTMLElement>('[data-scripted]')) scripted.hidden = false;
  fitToTrip(form, show);
  show();
}

/** Marks the points for the trip kept on this device, and puts those for other trips behind a button. */
function fitToTrip(form: HTMLFormElement, shown: () => void): void {
  const points = [...form.querySelectorAll<HTMLLIElement>('li[data-when]')];
  if (points.length === 0) return;
  const strip = form.querySelector<HTMLElement>('[data-trip]')!;
  const rest = strip.querySelector('button')!;
  let holding: Holding | undefined;
  let all = false;

  function apply(): void {
    let others = 0;
    for (const point of points) {
      const answer = holding ? concern(point.dataset.when!.split(' ') as Condition[], holding) : 'unknown';
      if (answer === 'no') others++;
      point.hidden = answer === 'no' && !all;
      point.querySelector<HTMLElement>('[data-yours]')!.hidden = answer !== 'yes';
    }
    for (const section of form.querySelectorAll('section')) section.hidden = !section.querySelector('li:not([hidden])');
    rest.hidden = others === 0;
    rest.textContent = all ? words.hideRest : words.showRest(others);
    strip.hidden = holding === undefined;
    if (holding) {
      const asked = new Set(points.flatMap((point) => point.dataset.when!.split(' ') as Condition[]));
      strip.querySelector('[data-said]')!.textContent = tripSaid(holding, asked);
    }
    shown();
  }

  async function look(): Promise<void> {
    const trip = await keptTrip(PLANNER_KEY);
    holding = trip && (await holdingOf(trip));
    linked();
    apply();
  }

  // A link to one point shows it, whatever the trip.
  function linked(): void {
    const point = points.find(({ id }) => id === location.hash.slice(1));
    if (!point || !holding || concern(point.dataset.when!.split(' ') as Condition[], holding) !== 'no') return;
    all = true;
    apply();
    point.scrollIntoView();
  }

  rest.addEventListener('click', () => {
    all = !all;
    apply();
  });
  window.addEventListener('hashchange', linked);
  window.addEventListener('storage', ({ key }) => {
    if (key === PLANNER_KEY || key === null) void look();
  });
  void look();
}
