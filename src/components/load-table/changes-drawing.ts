import { html, nothing, type TemplateResult } from 'lit';
import type { Change, Changes, Effects, Spread } from '../../core/compare/changes.ts';
import { curveWords } from '../curve-plot/words.ts';
import type { Measures } from '../units/measures.ts';
import { numberText } from '../units/number-text.ts';
import { changeWords, surenessWords, lookWords as words } from '../words/en-compare.ts';
import { difference, span } from './differences.ts';

interface Told {
  readonly crewMove: number;
  readonly trimDeg: number;
  /** A displacement hull has no hump to speak of. */
  readonly planing: boolean;
}

interface Effect {
  readonly name: string;
  readonly now: string;
  of(effects: Effects): string;
}

/** What each change does to the figures of the boat as it is: the two ends of what is credible. */
export function changesTable(found: Changes, told: Told, m: Measures): TemplateResult {
  const effects = effectsOf(found, told, m);
  return html`<div class="changes">
    <table role="table">
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col">${words.change}</th>
          ${effects.map(({ name }) => html`<th role="columnheader" scope="col" class="figure">${name}</th>`)}
          <th role="columnheader" scope="col">${words.sure}</th>
        </tr>
      </thead>
      <tbody role="rowgroup">
        <tr role="row" class="now">
          <th role="rowheader" scope="row">${words.asItIs}</th>
          ${effects.map(({ name, now }) => cell(name, now))}
          <td role="cell" class="sure"></td>
        </tr>
        ${found.changes.map((change) => changeRow(change, effects, told, m))}
      </tbody>
    </table>
  </div>`;
}

function changeRow(change: Change, effects: readonly Effect[], told: Told, m: Measures) {
  const { name, note } = changeWords[change.code];
  const size = change.code.startsWith('trim') ? m.show('angle', told.trimDeg) : m.show('length', told.crewMove);
  return html`<tr role="row">
    <th role="rowheader" scope="row">
      ${name(size)}${note ? html` <span class="why">${note}</span>` : nothing}
    </th>
    ${effects.map((effect) => cell(effect.name, effect.of(change.effects)))}
    <td role="cell" class="sure">
      <span class="label" aria-hidden="true">${words.sure}</span>
      ${surenessWords[change.sureness]}.${change.outsideMethod ? html` <span class="why">${words.outside}</span>` : nothing}
    </td>
  </tr>`;
}

function cell(name: string, value: string) {
  return html`<td role="cell" class="figure">
    <span class="label" aria-hidden="true">${name}</span><span>${value}</span>
  </td>`;
}

function effectsOf({ now, cruise }: Changes, { planing }: Told, m: Measures): readonly Effect[] {
  const speed = (si: number) => m.show('speed', si);
  const share = (value: number) => m.show('share', value);
  const rpm = (value: number) => curveWords.rpmOf(numberText(m.lang, Math.round(value / 10) * 10));
  const told = ({ low, high }: Spread, show: (size: number) => string) =>
    span(difference(low, show), difference(high, show));
  const top: Effect = { name: words.top, now: speed(now.topSpeed), of: ({ topSpeed }) => told(topSpeed, speed) };
  const turns: Effect = { name: words.rpm, now: rpm(now.fullThrottleRpm), of: (effects) => told(effects.rpm, rpm) };
  const use: Effect = {
    name: words.use(speed(cruise)),
    now: now.perMetre === undefined ? words.notHeld : '100%',
    of: (effects) => (effects.use ? told(effects.use, share) : words.notHeld),
  };
  if (!planing) return [top, turns, use];
  const onto: Effect = {
    name: words.plane,
    now: now.planingSpeed === undefined ? words.never : speed(now.planingSpeed),
    of: (effects) =>
      typeof effects.planing === 'string' ? words.planingWords[effects.planing] : told(effects.planing, speed),
  };
  const hump: Effect = {
    name: words.hump,
    now: share(now.humpMargin - 1),
    of: ({ humpMargin }) => told(humpMargin, share),
  };
  return [onto, hump, top, turns, use];
}
