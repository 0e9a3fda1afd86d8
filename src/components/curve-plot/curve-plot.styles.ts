import { css } from 'lit';

export const curvePlotStyles = css`
  :host {
    container-type: inline-size;
    --_curve: var(--homeleg-curve, light-dark(#0b6a66, #57bdb1));
    --_hump: light-dark(#f0e6cd, #2c2b1c);
    --_plane: light-dark(#e4efec, #162c2b);
    min-width: 0;
  }

  figure {
    margin: 0;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 12em;
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  .head {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    justify-content: space-between;
    align-items: center;
    margin-block-end: 8px;
  }

  .head p {
    margin: 0;
    font-weight: 600;
  }

  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }

  .choices button {
    padding-inline: 12px;
    white-space: nowrap;
  }

  .plot {
    position: relative;
    min-height: 16.5em;
  }

  svg {
    display: block;
    width: 100%;
    overflow: visible;
    print-color-adjust: exact;
  }

  svg svg {
    overflow: hidden;
  }

  text {
    fill: var(--_ink);
    text-anchor: middle;
    font-variant-numeric: tabular-nums;
  }

  .start {
    text-anchor: start;
  }

  .end {
    text-anchor: end;
  }

  .scale,
  .zone-name {
    fill: var(--_muted);
  }

  .grid {
    stroke: var(--_line);
  }

  .axis {
    stroke: var(--_edge);
  }

  .zone {
    fill: none;
  }

  .zone.hump {
    fill: var(--_hump);
  }

  .zone.planing {
    fill: var(--_plane);
  }

  .band {
    fill: var(--_curve);
    opacity: 0.22;
  }

  .band.beyond {
    opacity: 0.08;
  }

  .line {
    fill: none;
    stroke: var(--_curve);
    stroke-width: 3;
    stroke-linejoin: round;
  }

  .line.beyond {
    stroke: var(--_muted);
    stroke-width: 2;
    stroke-dasharray: 3 6;
  }

  .mark {
    fill: none;
    stroke: var(--_edge);
    stroke-dasharray: 2 3;
  }

  .mark.top,
  .mark.stuck {
    stroke: var(--_ink);
    stroke-dasharray: none;
  }

  .mark.stuck {
    stroke: var(--_stop);
  }

  .mark.limit {
    stroke: var(--_doubt);
    stroke-dasharray: 6 3;
  }

  circle.best {
    fill: var(--_raised);
    stroke: var(--_curve);
    stroke-width: 2.5;
  }

  .mark-name {
    stroke: var(--_paper);
    stroke-width: 4;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .mark-name.stuck {
    fill: var(--_stop);
    font-weight: 600;
  }

  .planned-line {
    stroke: var(--_ink);
    stroke-width: 1.5;
  }

  .planned {
    fill: var(--_ink);
    stroke: var(--_raised);
    stroke-width: 2.5;
  }

  .plate {
    fill: var(--_ink);
  }

  .on-plate {
    fill: var(--_paper);
    font-weight: 600;
  }

  .reading {
    fill: var(--_raised);
    stroke: var(--_accent);
    stroke-width: 2;
  }

  path.reading {
    stroke-dasharray: 4 3;
  }

  .trim {
    fill: none;
    stroke: var(--_muted);
    stroke-width: 2;
  }

  .reader {
    position: absolute;
    inset: 0;
    border-radius: var(--_radius);
    cursor: crosshair;
    touch-action: pan-y;
  }

  output {
    display: block;
    min-height: 2.9em;
    margin-block: 8px;
    font-variant-numeric: tabular-nums;
  }

  @container (min-width: 640px) {
    output {
      min-height: 1.45em;
    }
  }

  .facts {
    margin: 0 0 12px;
    padding-inline-start: 1.1em;
  }

  .scroll {
    max-height: 24em;
    overflow: auto;
  }

  @media (forced-colors: active) {
    :host {
      --_ink: CanvasText;
      --_muted: CanvasText;
      --_paper: Canvas;
      --_raised: Canvas;
      --_stop: CanvasText;
      --_doubt: CanvasText;
      --_curve: CanvasText;
    }

    .zone.hump,
    .zone.planing {
      fill: none;
      stroke: CanvasText;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .plot {
      min-height: 0;
    }

    .plot > svg {
      height: auto;
    }

    .choices,
    .reader,
    output,
    details {
      display: none;
    }
  }
`;
