import { html, nothing } from 'lit';
import { fleetEnd } from '../../core/hire/hire-times.ts';
import { morningHolds } from '../../core/hire/morning-now.ts';
import type { Fleet, Hire, Morning } from '../../core/hire/shapes.ts';
import { levelMark } from '../answer/verdict-mark.ts';
import type { Measures } from '../units/measures.ts';
import { outWords, deskWords as words } from '../words/en-desk.ts';
import { type DeskClock, SLIGHT } from './desk-clock.ts';
import { clockText, dayText, offsetAt } from './desk-time.ts';
import type { OverdueWarning } from './overdue-warning.ts';

/** Who is late, before anything else. */
export function alarm(
  late: readonly Hire[],
  now: number,
  m: Measures,
  asked: { readonly warning: OverdueWarning; readonly toOut: () => void },
) {
  const { warning, toOut } = asked;
  if (late.length === 0) return nothing;
  return html`<div class="alarm off-paper" role="alert">
    ${levelMark('no-go')}
    <div>
      ${late.map((hire) => html`<p><strong>${outWords.alarm(hire.boat, m.time(now - hire.due!))}</strong></p>`)}
    </div>
    <div class="row">
      <button type="button" @click=${toOut}>${words.views.out}</button>
      <button type="button" aria-pressed=${String(warning.soundOn)} @click=${warning.pressed}>
        ${warning.soundOn ? outWords.soundOff : outWords.soundOn}
      </button>
    </div>
  </div>`;
}

/** By a clock put back every due time comes late: the only change of a clock that hides an overdue boat. */
export function clockBack(out: readonly Hire[], clock: DeskClock, m: Measures) {
  const { now, putBack } = clock;
  const back = Math.max(putBack, ...out.map(({ leftAt }) => leftAt! - now));
  if (back <= SLIGHT) return nothing;
  return html`<p class="warn row off-paper" role="alert">
    <span>${outWords.clockBack(m.time(back))}</span>
    ${putBack > 0 ? html`<button type="button" @click=${() => clock.accept()}>${outWords.clockSeen}</button>` : nothing}
  </p>`;
}

/** Until when the morning holds; `toMorning` opens its form, where that is not open already. */
export function morningState(morning: Morning | undefined, now: number, lang: string, toMorning?: () => void) {
  const until = morning && clockText(morning.until, now, lang);
  if (morningHolds(morning, now)) return html`<p class="muted">${words.morningSet(until!)}</p>`;
  return html`<p class="warn row">
    <span>${until ? words.morningExpired(until) : words.morningMissing}</span>
    ${toMorning ? html`<button type="button" @click=${toMorning}>${words.setNow}</button>` : nothing}
  </p>`;
}

/** Whose fleet it is, who answers for it, whether it still may go out. */
export function fleetState(fleet: Fleet, demo: boolean, now: number, lang: string) {
  if (now > fleetEnd(fleet, offsetAt(now))) {
    return html`<p class="warn">${words.fleetOver(dayText(fleet.until, lang))}</p>`;
  }
  if (demo) return html`<p class="warn">${words.demo}</p>`;
  return html`<p class="muted">${fleet.name}. ${words.answersFor(fleet.answers)}.</p>`;
}
