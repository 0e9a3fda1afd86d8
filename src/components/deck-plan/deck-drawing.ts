import { html, nothing, svg } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Craft } from '../../core/craft/shapes.ts';
import type { LoadBalance } from '../../core/load/balance.ts';
import type { Measures } from '../units/measures.ts';
import { dataName } from '../words/en-data.ts';
import { whoIs, deckWords as words } from '../words/en-deck.ts';
import { balanceDrawing, goodField } from './balance-drawing.ts';
import { boatDrawing, placeDrawing } from './boat-drawing.ts';
import type { DeckEditor } from './deck-editor.ts';
import { drawnScale } from './deck-layout.ts';
import type { HullPlan } from './hull-plan.ts';
import { suits } from './landing.ts';
import { n, pieceDrawing, SIZES } from './piece-drawing.ts';
import type { Piece } from './pieces.ts';
import type { PlaceMark } from './place-marks.ts';
import { fullName } from './place-names.ts';
import type { Point, View } from './view.ts';

/** All that the drawing shows. */
export interface Picture {
  readonly craft: Craft;
  readonly plan: HullPlan;
  readonly marks: readonly PlaceMark[];
  readonly view: View;
  readonly pieces: readonly Piece[];
  readonly drawn: ReadonlyMap<string, Point>;
  readonly balance: LoadBalance;
  readonly measures: Measures;
  readonly editor: DeckEditor;
}

/** px from a mark within which a piece hides its words. */
const COVERS = { x: 42, y: 26 };
/** px between a piece and its place from which a line joins them. */
const LEADER = 5;

/** The boat from above with everybody and everything on it. */
export function deckDrawing(picture: Picture) {
  const { craft, plan, marks, view, pieces, balance, measures, editor } = picture;
  const { hull, drive } = craft;
  const lifted =
    editor.moves.hand?.by === 'pointer' ? pieces.find(({ key }) => key === editor.moves.hand?.key) : undefined;
  return html`<svg
    class="deck"
    viewBox="0 0 ${view.width} ${view.height}"
    width=${view.width}
    height=${view.height}
    role="group"
    aria-label=${words.drawing}
  >
    ${boatDrawing(hull, plan, view, figure(drive.mass, measures))}
    <g aria-hidden="true">
      ${goodField(hull, balance, view)}
      ${marks.map((mark) => place(mark, picture))}
      ${view.shore < view.height ? shore(view) : nothing}
      ${pieces.map((piece) => leader(piece, picture))}
    </g>
    ${repeat(
      pieces,
      ({ key }) => key,
      (piece, index) => onDeck(piece, index, picture, piece === lifted),
    )}
    ${balanceDrawing(hull, balance, view, measures)}
    ${lifted ? inHand(lifted, picture) : nothing}
  </svg>`;
}

/** A mass without its unit, short enough for a piece. */
function figure(kg: number, measures: Measures): string {
  const [shown = ''] = measures.show('mass', kg).split('\u00a0');
  return shown.replace(/[.,]0$/, '');
}

function place(mark: PlaceMark, { pieces, drawn, view, editor }: Picture) {
  const { hand } = editor.moves;
  const moving = pieces.find(({ key }) => key === (hand?.by === 'pointer' ? hand.key : editor.selected));
  const goes = moving && !moving.fixed && mark.stations.some((station) => suits(moving.kind, station));
  const to = hand?.by === 'pointer' && 'station' in hand.landing ? hand.landing.station : undefined;
  const { x, y } = view.point(mark.spot);
  const covered = [...drawn.values()].some((at) => Math.abs(at.x - x) < COVERS.x && Math.abs(at.y - y) < COVERS.y);
  const state = to && mark.stations.includes(to) ? 'here' : goes ? 'can' : 'plain';
  return placeDrawing(mark, view, state, covered);
}

/** From where a piece is drawn to where it really is. */
function leader({ key, place }: Piece, { drawn, view, editor }: Picture) {
  const at = drawn.get(key);
  if (!place || !at || key === editor.moves.hand?.key) return nothing;
  const { x, y } = view.point(place);
  if (Math.hypot(x - at.x, y - at.y) < LEADER) return nothing;
  return svg`<path class="leader" d=${`M${n(at.x)} ${n(at.y)}L${n(x)} ${n(y)}`} />
    <circle class="leader-end" cx=${n(x)} cy=${n(y)} r="2.5" />`;
}

function onDeck(
  piece: Piece,
  index: number,
  { craft, pieces, drawn, view, measures, editor }: Picture,
  lifted: boolean,
) {
  const { key, kind, fixed, helm, mass } = piece;
  const { x, y } = drawn.get(key)!;
  const selected = key === editor.selected;
  const stop = pieces.some((other) => other.key === editor.current) ? key === editor.current : index === 0;
  return svg`<g
    class="piece ${kind} ${selected ? 'selected' : ''} ${fixed ? 'fixed' : ''} ${lifted ? 'away' : ''}"
    data-key=${key}
    role="button"
    tabindex=${stop ? '0' : '-1'}
    aria-pressed=${String(selected)}
    aria-label=${fullName(craft.hull, pieces, piece, measures)}
    aria-describedby="keys"
    transform=${`translate(${n(x)} ${n(y)})`}
    @focus=${() => editor.reached(key)}
    @blur=${() => editor.left()}
    @keydown=${(event: KeyboardEvent) => editor.key(event, key)}
    @keyup=${() => editor.keyLetGo()}
  >
    <title>${whoIs(piece)}, ${measures.show('mass', mass)}</title>
    ${halo(kind, view)}
    ${pieceDrawing(kind, figure(mass, measures), view.scale, helm)}
  </g>`;
}

/** What is hit, and what shows the focus and the selection. */
function halo(kind: Piece['kind'], view: View) {
  const scale = drawnScale(view);
  const rx = SIZES[kind].across * scale + 6;
  const ry = Math.max(SIZES[kind].along * scale + 6, 20);
  return svg`<rect class="reachable" x="-22" y="-22" width="44" height="44" />
    <rect class="halo" x=${n(-rx)} y=${n(-ry)} width=${n(2 * rx)} height=${n(2 * ry)} rx=${n(Math.min(rx, ry))} />`;
}

/** The piece under the finger, above all others, with the name of where it would go. */
function inHand(piece: Piece, { drawn, view, measures, editor }: Picture) {
  const at = drawn.get(piece.key)!;
  const { landing } = editor.moves.hand!;
  const refused = 'refused' in landing;
  const label = refused ? words.refusedShort : 'station' in landing ? dataName(landing.station.label) : '';
  return svg`<g
      class="piece ${piece.kind} lifted ${refused ? 'refused' : ''}"
      transform=${`translate(${n(at.x)} ${n(at.y)})`}
      aria-hidden="true"
    >
      ${halo(piece.kind, view)}
      ${pieceDrawing(piece.kind, figure(piece.mass, measures), view.scale, piece.helm)}
    </g>
    ${label ? callout(label, at, view.width) : nothing}`;
}

function shore({ shore: top, width, height }: View) {
  // Wider than the drawing: it goes on to the edges of the frame.
  return svg`<rect class="shore" x=${-width} y=${n(top)} width=${3 * width} height=${n(height - top)} />
    <text class="shore-word" x="10" y=${n(top + 17)}>${words.ashore}</text>`;
}

/** A label above a point, or below it near the top, kept inside the drawing. */
function callout(label: string, at: Point, width: number) {
  const half = Math.min(width / 2 - 4, 3.3 * label.length + 10);
  const x = Math.min(width - half - 4, Math.max(half + 4, at.x));
  const y = at.y < 64 ? at.y + 44 : at.y - 46;
  return svg`<g class="callout" aria-hidden="true">
    <rect x=${n(x - half)} y=${n(y - 12)} width=${n(2 * half)} height="24" rx="12" />
    <text x=${n(x)} y=${n(y)} dy="0.35em">${label}</text>
  </g>`;
}
