import { css } from 'lit';

/** The look of what is drawn on the map. Each kind of area and line has a pattern of its own beside its colour. */
export const drawingStyles = css`
  path.known {
    fill: var(--_water);
    fill-opacity: 1;
    stroke: none;
  }

  path.land {
    fill: var(--_land);
    stroke: color-mix(in srgb, var(--_land) 60%, var(--_ink));
    stroke-width: 1;
  }

  [data-pictures='shown'] :is(path.known, path.land, path.grid) {
    fill: none;
    stroke: none;
  }

  [data-pictures='shown'] .word:is(.land, .grid-lat, .grid-lon) {
    display: none;
  }

  path.grid {
    stroke: color-mix(in srgb, var(--_water) 78%, var(--_ink));
    stroke-width: 0.75;
    stroke-opacity: 0.6;
  }

  path.shoal {
    stroke: var(--_muted);
    stroke-width: 0.75;
  }

  #shoal .sand {
    fill: color-mix(in srgb, var(--_land) 45%, transparent);
  }

  #shoal .dot {
    fill: var(--_muted);
  }

  path.speed-limit {
    stroke: var(--_doubt);
    stroke-width: 1.5;
    stroke-dasharray: 6 5;
  }

  #speed-limit .bar {
    stroke: var(--_doubt);
    stroke-width: 0.6;
    stroke-opacity: 0.35;
  }

  path.keep-out {
    stroke: var(--_stop);
    stroke-width: 1.5;
  }

  #keep-out .bar {
    stroke: var(--_stop);
    stroke-width: 1.2;
    stroke-opacity: 0.7;
  }

  .word {
    font-size: 12px;
    line-height: 16px;
    white-space: nowrap;
    color: var(--_ink);
  }

  .word span {
    position: absolute;
    translate: -50% -50%;
    paint-order: stroke;
    text-shadow:
      0 0 3px var(--_water),
      0 0 3px var(--_water),
      0 0 3px var(--_water);
  }

  .word.land span {
    color: var(--_muted);
    letter-spacing: 0.04em;
    text-shadow: none;
  }

  .word.shoal span {
    font-style: italic;
    color: var(--_muted);
  }

  .word.speed-limit span {
    padding: 0 5px;
    border: 1px dashed var(--_doubt);
    border-radius: 4px;
    background: var(--_raised);
    text-shadow: none;
  }

  .word.keep-out span {
    color: var(--_stop);
    font-weight: 600;
  }

  .word.landing span {
    translate: 0 -50%;
    padding-inline-start: 10px;
  }

  .word.landing::before {
    content: '';
    position: absolute;
    inset: -5px auto auto -5px;
    inline-size: 10px;
    block-size: 10px;
    border: 2px solid var(--_ink);
    background: var(--_raised);
    rotate: 45deg;
  }

  .word.grid-lat span {
    translate: 0 -100%;
    color: var(--_muted);
    font-size: 11px;
  }

  .word.grid-lon span {
    translate: 4px -100%;
    color: var(--_muted);
    font-size: 11px;
  }

  .leaflet-outline-pane {
    z-index: 340;
  }

  .leaflet-outline-pane svg {
    max-width: none;
    max-height: none;
  }

  path.reach {
    stroke: var(--_ink);
    fill: none;
  }

  path.out-and-home {
    fill: var(--_ink);
    fill-opacity: 0.08;
  }

  path.set-route {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
    stroke-dasharray: 9 4 2 4;
  }

  path.casing {
    stroke: var(--_raised);
  }

  path.route {
    stroke: var(--_accent);
  }

  path.home {
    stroke: var(--_raised);
  }

  path.slowed {
    stroke: var(--_doubt);
  }

  .mark span {
    position: absolute;
    inset: -30px auto auto -14px;
    padding: 1px 8px;
    border: 1.5px solid var(--_ink);
    border-radius: 6px;
    background: var(--_raised);
    font-size: 12px;
    line-height: 18px;
    white-space: nowrap;
  }

  .mark.leftward span {
    inset-inline: auto -14px;
  }

  .mark::before {
    content: '';
    position: absolute;
    inset: -7px auto auto -7px;
    inline-size: 14px;
    block-size: 14px;
    background: var(--_ink);
    clip-path: polygon(50% 0, 100% 50%, 50% 100%, 0 50%);
  }

  .mark.hazard span {
    border-color: var(--_stop);
    color: var(--_stop);
    font-weight: 600;
  }

  .mark.hazard::before {
    background: var(--_stop);
    clip-path: polygon(50% 0, 100% 100%, 0 100%);
  }

  .handle {
    position: absolute;
    inset: 0;
    min-block-size: 0;
    min-inline-size: 0;
    display: grid;
    place-items: center;
    padding: 0;
    border: 0;
    border-radius: 50%;
    background: transparent;
    box-shadow: none;
    color: inherit;
    font-weight: 600;
    cursor: grab;
    pointer-events: auto;
    touch-action: none;
    user-select: none;
    -webkit-touch-callout: none;
  }

  .handle.near {
    inset: 8px;
  }

  .handle[aria-pressed='true'] {
    box-shadow: none;
  }

  .dot {
    display: grid;
    place-items: center;
    min-inline-size: 24px;
    block-size: 24px;
    padding-inline: 4px;
    border: 2px solid var(--_accent);
    border-radius: 12px;
    background: var(--_raised);
    color: var(--_ink);
    font-size: 12px;
    line-height: 1;
    font-variant-numeric: tabular-nums;
  }

  .end .dot {
    background: var(--_accent);
    color: var(--_on-accent);
  }

  [aria-pressed='true'] .dot {
    border-color: var(--_ink);
    outline: 2px solid var(--_raised);
    box-shadow: 0 0 0 5px var(--_ink);
  }

  .handle[data-role]:not([data-role=''])::after {
    content: attr(data-role);
    position: absolute;
    inset-inline-end: calc(50% + 14px);
    padding: 0 5px;
    border-radius: 4px;
    background: color-mix(in srgb, var(--_raised) 85%, transparent);
    font-size: 12px;
    line-height: 16px;
    pointer-events: none;
  }

  .middle {
    inset: 6px;
  }

  .middle::before {
    content: '';
    inline-size: 12px;
    block-size: 12px;
    border: 2px solid var(--_accent);
    border-radius: 50%;
    background: var(--_raised);
    opacity: 0.85;
  }

  #frame[data-dragging] .middle-box {
    display: none;
  }

  #frame[data-dragging] .handle {
    cursor: grabbing;
  }

  @media (forced-colors: active) {
    .dot,
    .mark span,
    .word.speed-limit span {
      border-color: CanvasText;
    }

    .end .dot {
      border-width: 4px;
      background: Canvas;
      color: CanvasText;
    }

    path.route {
      stroke: Highlight;
    }
  }
`;
