import { html } from 'lit';
import { property } from 'lit/decorators.js';
import { DEPTH_WANTED } from '../../core/trip/defaults.ts';
import { type DepthHours, depthHours } from '../../core/trip/depth-hours.ts';
import { WEATHER } from '../../core/trip/judge-depth.ts';
import { timeAt } from '../../core/water/clock.ts';
import type { Interval } from '../../core/water/depth-windows.ts';
import { define } from '../define.ts';
import { answersStyles } from '../further/answers.styles.ts';
import type { Ask } from '../further/ask.ts';
import { cell, head } from '../further/table-parts.ts';
import { SpeakingElement } from '../language/speaking-element.ts';
import { controls } from '../theme/controls.styles.ts';
import { tokens } from '../theme/tokens.styles.ts';
import { NAUTICAL } from '../units/default-measures.ts';
import type { Measures } from '../units/measures.ts';
import { startWords as words } from '../words/en-start.ts';
import type { StartsDay } from './day-of-starts.ts';

/** @summary The hours of the day with water enough over the shoals on the route and at the landings whose height is told. */
export class DepthList extends SpeakingElement {
  static override styles = [tokens, controls, answersStyles];

  @property({ attribute: false }) ask: Ask | undefined;
  @property({ attribute: false }) day: StartsDay | undefined;
  @property({ attribute: false }) measures: Measures = NAUTICAL;

  override render() {
    return html`<div class="stack"><h4>${words.depthTitle}</h4>${this.#inside()}</div>`;
  }

  #inside() {
    const { ask, day, measures: m } = this;
    const prepared = ask?.standing?.prepared;
    if (!ask || !prepared || !day) return html`<p class="hint">${words.depthNone}</p>`;
    if (!day.heightAt && !prepared.around.height) return html`<p class="hint">${words.depthNone}</p>`;
    const places = depthHours(prepared, day.span, day.heightAt);
    if (places.length === 0) return html`<p class="hint">${words.depthNothing}</p>`;
    const depth = m.show('length', ask.trip.policy.depth ?? DEPTH_WANTED);
    return html`<table role="table" class="cards">
      <caption>${words.depthIntro(depth, m.show('length', WEATHER))}</caption>
      <thead role="rowgroup">
        <tr role="row">${head(words.place, false)} ${head(words.dries)} ${head(words.hours, false)}</tr>
      </thead>
      <tbody role="rowgroup">${places.map((place) => this.#row(place, day))}</tbody>
    </table>`;
  }

  #row({ name, dries, open, unknown }: DepthHours, day: StartsDay) {
    const { measures: m } = this;
    const told = (spans: readonly Interval[]) =>
      new Intl.ListFormat(m.lang).format(spans.map((span) => spanText(span, day)));
    const all = open.length === 1 && open[0]!.from <= day.span.from && open[0]!.to >= day.span.to;
    const hours = all ? words.allDay : open.length > 0 ? told(open) : words.never;
    const rest = unknown.length > 0 ? `; ${words.notTold(told(unknown))}` : '';
    return html`<tr role="row">
      <th role="rowheader" scope="row">${name}</th>
      ${cell(dries < 0 ? words.least : words.dries, m.show('length', Math.abs(dries)))}
      ${cell(words.hours, `${hours}${rest}`, 'text')}
    </tr>`;
  }
}

/** To whole minutes, inwards. */
function spanText({ from, to }: Interval, { offsetAt, span }: StartsDay): string {
  const clock = (seconds: number) => timeAt(seconds, offsetAt?.(seconds) ?? 0).slice(11, 16);
  const first = clock(Math.ceil(from / 60) * 60);
  const last = to >= span.to ? '24:00' : clock(Math.floor(to / 60) * 60);
  return words.span(first, last);
}

define('homeleg-depth-list', DepthList);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-depth-list': DepthList;
  }
}
