import type { Map as LeafletMap, Marker } from 'leaflet';
import { css, html, svg } from 'lit';
import type { LatLon } from '../../core/route/shapes.ts';
import type { LegPlan, Trip } from '../../core/trip/shapes.ts';
import { secondsOf } from '../../core/water/clock.ts';
import { windAt, windTable } from '../../core/water/wind-by-time.ts';
import { arrowWords as words } from './arrow-words.ts';
import type { Leaflet } from './map-life.ts';

/** Where wind and stream go on a stretch, degrees; absent: none, or not known. */
export interface Flows {
  readonly at: LatLon;
  readonly from: LatLon;
  readonly to: LatLon;
  readonly wind?: number;
  readonly stream?: number;
}

/** Less than this is no wind or stream to draw, m/s. */
const LEAST = { wind: 0.5, stream: 0.05 };
/** A stretch shorter than this on the screen has no room for arrows, px; nor has the map for more of them. */
const ROOM = 64;
const MOST = 40;
/** Arrows stand this far beside the line, px: wind to the left of the way, stream to the right. */
const BESIDE = 17;
/** Share of a stretch at which they stand: out and home, over the same water, do not meet. */
const ALONG = 0.38;

/** Wind and stream on each stretch at the hour it is sailed. */
export function flowsOf(legs: readonly LegPlan[], trip: Trip): readonly Flows[] {
  const { wind, departure } = trip.conditions;
  const table = typeof wind === 'object' && 'forecast' in wind ? windTable(wind.forecast) : undefined;
  const windThen = (leg: LegPlan) => {
    if (!table) return typeof wind === 'object' && 'speed' in wind ? wind : undefined;
    if (departure === undefined) return undefined;
    const found = windAt(table, secondsOf(departure) + leg.startsAt + leg.time / 2);
    return found.known ? found.wind : undefined;
  };
  return legs.flatMap((leg): Flows[] => {
    const blows = Number.isFinite(leg.startsAt + leg.time) ? windThen(leg) : undefined;
    const { stream, from, to } = leg;
    const flows = {
      ...(blows && blows.speed >= LEAST.wind && { wind: (blows.fromDeg + 180) % 360 }),
      ...(stream && stream.rate >= LEAST.stream && { stream: stream.setDeg }),
    };
    if (flows.wind === undefined && flows.stream === undefined) return [];
    const at = { lat: from.lat + (to.lat - from.lat) * ALONG, lon: from.lon + (to.lon - from.lon) * ALONG };
    return [{ at, from, to, ...flows }];
  });
}

const KINDS = ['wind', 'stream'] as const;
type Kind = (typeof KINDS)[number];

/** Small arrows beside the route. They say nothing that the table of legs does not, so they are no part of it for ears. */
export class FlowArrows {
  readonly map: LeafletMap;
  #leaflet: Leaflet;
  #flows: readonly Flows[] = [];
  #markers: Marker[] = [];

  constructor(map: LeafletMap, leaflet: Leaflet, root: ShadowRoot) {
    this.map = map;
    this.#leaflet = leaflet;
    const sheet = arrowStyles.styleSheet;
    if (sheet && !root.adoptedStyleSheets.includes(sheet)) root.adoptedStyleSheets.push(sheet);
    map.on('moveend', this.#place);
  }

  draw(flows: readonly Flows[]): void {
    this.#flows = flows;
    this.#place();
  }

  /** Of which there are any. */
  get kinds(): readonly Kind[] {
    return KINDS.filter((kind) => this.#flows.some((flow) => flow[kind] !== undefined));
  }

  /** Entries for the key of the map, for those that are on it. */
  key() {
    return this.kinds.map(
      (kind) => html`<li>
        <svg class="flow ${kind}" viewBox="-14 -14 28 28" aria-hidden="true">
          ${svg`<path d=${SHAPES[kind]} transform="rotate(90)" />`}
        </svg>
        ${words[kind]}
      </li>`,
    );
  }

  #place = (): void => {
    for (const marker of this.#markers.splice(0)) marker.remove();
    const size = this.map.getSize();
    for (const { at, from, to, wind, stream } of this.#flows) {
      const [a, b, middle] = [from, to, at].map(({ lat, lon }) => this.map.latLngToContainerPoint([lat, lon]));
      if (!a || !b || !middle || this.#markers.length >= MOST) return;
      const length = Math.hypot(b.x - a.x, b.y - a.y);
      const seen = middle.x > 0 && middle.y > 0 && middle.x < size.x && middle.y < size.y;
      if (length < ROOM || !seen) continue;
      // To the right of the way, as the screen has it.
      const [x, y] = [(-(b.y - a.y) / length) * BESIDE, ((b.x - a.x) / length) * BESIDE];
      if (wind !== undefined) this.#arrow({ x: middle.x - x, y: middle.y - y }, 'wind', wind);
      if (stream !== undefined) this.#arrow({ x: middle.x + x, y: middle.y + y }, 'stream', stream);
    }
  };

  #arrow({ x, y }: { x: number; y: number }, kind: Kind, deg: number): void {
    const { DivIcon, Marker: LeafletMarker } = this.#leaflet;
    const box = drawn(kind, deg);
    const icon = new DivIcon({ html: box, className: 'flow-box', iconSize: [28, 28] });
    const at = this.map.containerPointToLatLng([x, y]);
    const marker = new LeafletMarker(at, { icon, interactive: false, keyboard: false, zIndexOffset: -2000 }).addTo(
      this.map,
    );
    marker.getElement()?.setAttribute('aria-hidden', 'true');
    this.#markers.push(marker);
  }
}

/** Pointing north: a thin shaft with an open head, and a waved one with a double head. */
const WIND = 'M0 11V-10M-4.5 -5 0 -10.5 4.5 -5';
const STREAM = 'M0 11q-3.5 -3 0 -6t0 -6V-4M-4.5 -5 0 -10.5 4.5 -5M-4.5 0 0 -5.5 4.5 0';
const SHAPES = { wind: WIND, stream: STREAM };

const SVG = 'http://www.w3.org/2000/svg';

function drawn(kind: Kind, deg: number): HTMLElement {
  const picture = document.createElementNS(SVG, 'svg');
  picture.setAttribute('class', `flow ${kind}`);
  picture.setAttribute('viewBox', '-14 -14 28 28');
  for (const className of ['halo', 'line']) {
    const path = document.createElementNS(SVG, 'path');
    path.setAttribute('class', className);
    path.setAttribute('d', SHAPES[kind]);
    path.setAttribute('transform', `rotate(${Math.round(deg)})`);
    picture.append(path);
  }
  // Leaflet takes no other kind of element.
  const box = document.createElement('span');
  box.append(picture);
  return box;
}

const arrowStyles = css`
  .flow-box {
    pointer-events: none;
  }

  .flow {
    display: block;
    inline-size: 28px;
    block-size: 28px;
    flex: none;
    overflow: visible;
  }

  .flow path {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.8;
    stroke-linecap: round;
    stroke-linejoin: round;
  }

  .flow.wind path {
    stroke: var(--_muted);
  }

  .flow path.halo {
    stroke: var(--_water);
    stroke-width: 5;
    stroke-opacity: 0.85;
  }

  @media (forced-colors: active) {
    .flow path,
    .flow.wind path {
      stroke: CanvasText;
    }

    .flow path.halo {
      stroke: Canvas;
    }
  }
`;
