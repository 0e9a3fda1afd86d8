import { html, nothing, type TemplateResult } from 'lit';
import { EARLY_TURN, type FromHere, type WayOut } from '../../core/trip/from-here.ts';
import type { Plan } from '../../core/trip/shapes.ts';
import { levelMark, verdictMark } from '../answer/verdict-mark.ts';
import type { Ask } from '../further/ask.ts';
import type { Measures } from '../units/measures.ts';
import { hereWords as words } from '../words/en-further.ts';
import { reasonText } from '../words/en-reasons.ts';

/** More or less used than planned by less than this share tells nothing. */
const SAME = 0.03;
/** Farther off the planned line than this is worth saying, m. */
const OFF = 300;

export interface Answered {
  readonly ask: Ask;
  readonly found: FromHere;
  /** ISO 8601 with offset. */
  readonly time: string;
  readonly homeward: boolean;
  readonly measures: Measures;
}

/** What the gauge says so far, and the ways out, each with its margin beyond the reserve, its time and its answer. */
export function waysDrawing(answered: Answered): TemplateResult {
  const { ask, found, measures: m } = answered;
  const { plan } = ask;
  const landings = found.ways.some(({ kind }) => kind === 'landing');
  return html`
    <div class="used">${usedLines(found, m).map((line) => html`<p>${line}</p>`)}</div>
    ${
      (found.usedRatio ?? 1) >= EARLY_TURN
        ? html`<p class="early marginal">${levelMark('marginal')} <span>${words.early}</span></p>`
        : nothing
    }
    <ul class="ways">${found.ways.map((way) => wayItem(way, answered))}</ul>
    ${landings ? nothing : html`<p>${words.noLanding}</p>`}
    <p class="hint">${words.kept(m.show('amount', plan.reserve, plan.store))}</p>
  `;
}

function usedLines({ usedRatio, carriedOn, off }: FromHere, m: Measures): string[] {
  const lines = [];
  if (usedRatio === undefined) lines.push(words.usedUnknown);
  else if (Math.abs(usedRatio - 1) < SAME) lines.push(words.usedSame);
  else {
    lines.push(words.used(m.show('share', Math.abs(usedRatio - 1)), usedRatio > 1));
    lines.push(carriedOn > 1 ? words.carried : words.notCarried);
  }
  if (off > OFF) lines.push(words.off(m.show('distance', off)));
  return lines;
}

function wayItem(way: WayOut, { ask, time, homeward, measures: m }: Answered) {
  const { verdict, plan } = way;
  const reason =
    plan.reasons.find(({ level }) => level === verdict) ?? plan.reasons.find(({ level }) => level !== 'note');
  return html`<li class=${verdict}>
    ${verdictMark(verdict)}
    <div>
      <h4>${wayName(way, homeward)}</h4>
      <p class="told">${words.verdicts[verdict]}</p>
      <p class="margin">${marginText(way, ask.plan, m)}</p>
      ${
        Number.isFinite(way.time)
          ? html`<p>${words.arrives(m.clock(time, way.time), m.time(way.time), m.show('distance', way.distance))}</p>`
          : nothing
      }
      ${verdict !== 'go' && reason ? html`<p class="sub">${reasonText(reason, m, plan.store)}</p>` : nothing}
    </div>
  </li>`;
}

export function wayName({ kind, name }: WayOut, homeward: boolean): string {
  if (kind === 'landing') return words.landing(name ?? '');
  if (!homeward) return words.kinds[kind];
  return kind === 'go-on' ? words.homewardOn : words.turnBack;
}

/** "3.2 L beyond the reserve", "1.1 L into the reserve", "0.6 L short". */
function marginText({ margin, left }: WayOut, { store }: Plan, m: Measures): string {
  if (!Number.isFinite(left)) return words.noWay;
  if (left < 0) return words.short(m.show('amount', -left, store));
  const figure = m.show('amount', Math.abs(margin), store);
  return margin < 0 ? words.under(figure) : words.beyond(figure);
}
