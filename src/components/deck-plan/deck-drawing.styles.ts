import { css } from 'lit';

/** The boat, its places, its balance and what is on it. */
export const deckDrawingStyles = css`
  :host {
    --_tube: light-dark(#fffdf7, #34504e);
    --_tube-edge: light-dark(#5d716c, #8ba6a1);
    --_floor: light-dark(#efe8d6, #1d3231);
    --_faint: light-dark(#7d7a68, #8aa39e);
  }

  svg.deck {
    display: block;
    max-width: 100%;
    height: auto;
    overflow: visible;
    margin-inline: auto;
    print-color-adjust: exact;
  }

  .deck text {
    font-size: clamp(11px, 0.69em, 14px);
    text-anchor: middle;
    fill: var(--_muted);
    pointer-events: none;
  }

  .deck .mass {
    font-size: clamp(12px, 0.75em, 14px);
  }

  .hull {
    fill: var(--_tube);
    stroke: var(--_tube-edge);
    stroke-width: 1.6;
    stroke-linejoin: round;
  }

  .floor {
    fill: var(--_floor);
    stroke: var(--_tube-edge);
    stroke-width: 1.2;
    stroke-linejoin: round;
  }

  .seam {
    fill: none;
    stroke: var(--_tube-edge);
    stroke-width: 1;
    opacity: 0.45;
  }

  .transom {
    stroke: var(--_tube-edge);
    stroke-width: 6;
  }

  .engine rect {
    fill: light-dark(#33474a, #0b1716);
    stroke: var(--_tube-edge);
    stroke-width: 1.2;
  }

  .engine .clamp {
    stroke: var(--_tube-edge);
    stroke-width: 9;
  }

  .engine .line {
    stroke: light-dark(#9fb3b1, #6f8784);
    stroke-width: 1.4;
    stroke-linecap: round;
  }

  .deck .engine .mass {
    fill: #eef4f1;
    font-weight: 600;
  }

  .place rect {
    fill: light-dark(#fffdf766, #ffffff0a);
    stroke: var(--_faint);
    stroke-width: 1;
    stroke-dasharray: 3 3;
    stroke-opacity: 0.75;
  }

  .deck .place text {
    fill: light-dark(#66634f, #9db4af);
  }

  .place.bow-tube rect {
    fill: none;
    stroke: none;
  }

  .helm-wheel {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2;
    stroke-linecap: round;
  }

  .place.can rect {
    fill: color-mix(in srgb, var(--_accent) 12%, var(--_floor));
    stroke: var(--_accent);
    stroke-width: 1.5;
    stroke-opacity: 1;
  }

  .place.here rect {
    fill: color-mix(in srgb, var(--_accent) 30%, var(--_floor));
    stroke: var(--_accent);
    stroke-width: 2.5;
    stroke-dasharray: none;
    stroke-opacity: 1;
  }

  .good-field {
    fill: color-mix(in srgb, var(--_go) 26%, transparent);
    stroke: var(--_go);
    stroke-width: 1.2;
  }

  .rule {
    fill: none;
    stroke: var(--_faint);
    stroke-width: 1.2;
  }

  .good {
    fill: var(--_go);
  }

  .ray {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1;
    stroke-dasharray: 2 4;
    opacity: 0.5;
    pointer-events: none;
  }

  .pointer {
    fill: var(--_go);
  }

  .pointer.is-little {
    fill: var(--_doubt);
  }

  .pointer.is-off {
    fill: var(--_stop);
  }

  .deck .reading {
    font-weight: 600;
    fill: var(--_go);
  }

  .deck .reading.is-little {
    fill: var(--_doubt);
  }

  .deck .reading.is-off {
    fill: var(--_stop);
  }

  .deck .side.port {
    text-anchor: start;
  }

  .deck .side.starboard {
    text-anchor: end;
  }

  .sign {
    vertical-align: -0.2em;
  }

  .centre {
    pointer-events: none;
  }

  .centre .disc {
    fill: #ffffff;
  }

  .centre .quarters {
    fill: #15302f;
  }

  .centre .ring {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.6;
  }

  .leader {
    stroke: var(--_faint);
    stroke-width: 1.2;
    pointer-events: none;
  }

  .leader-end {
    fill: var(--_faint);
    pointer-events: none;
  }

  .piece {
    cursor: grab;
    outline: none;
  }

  .piece.fixed {
    cursor: pointer;
  }

  .dragging .piece {
    cursor: grabbing;
  }

  .reachable {
    fill: transparent;
  }

  .halo {
    fill: none;
    stroke: none;
  }

  .piece.selected .halo {
    fill: color-mix(in srgb, var(--_accent) 22%, transparent);
    stroke: var(--_accent);
    stroke-width: 2.5;
  }

  .piece:focus-visible .halo {
    stroke: var(--_accent);
    stroke-width: 3;
  }

  .piece.away {
    opacity: 0;
  }

  .piece.lifted {
    pointer-events: none;
    filter: drop-shadow(0 3px 4px rgb(0 0 0 / 0.35));
  }

  .piece.lifted.refused .halo {
    fill: color-mix(in srgb, var(--_stop) 22%, transparent);
    stroke: var(--_stop);
    stroke-width: 2.5;
    stroke-dasharray: 5 4;
  }

  .shore {
    fill: var(--_land);
  }

  .deck .shore-word {
    text-anchor: start;
    fill: var(--_ink);
    font-weight: 600;
  }

  .callout rect {
    fill: var(--_ink);
  }

  .deck .callout text {
    fill: var(--_paper);
    font-size: 12px;
    font-weight: 600;
  }

  @media (forced-colors: active) {
    .hull,
    .floor,
    .place rect,
    .shore {
      fill: Canvas;
      stroke: CanvasText;
    }

    .deck text,
    .deck .place text,
    .deck .reading.reading {
      fill: CanvasText;
    }

    .engine rect {
      fill: Canvas;
      stroke: CanvasText;
    }

    .deck .engine .mass {
      fill: CanvasText;
    }

    .good,
    .pointer,
    .pointer.is-little,
    .pointer.is-off {
      fill: Highlight;
    }

    .good-field {
      fill: none;
      stroke: Highlight;
      stroke-width: 2;
    }

    .callout rect {
      fill: CanvasText;
    }

    .deck .callout text {
      fill: Canvas;
    }

    .centre .disc {
      fill: Canvas;
    }

    .centre .quarters,
    .centre .ring {
      stroke: CanvasText;
      fill: none;
    }
  }
`;
