import { css } from 'lit';

/** Plots of the trials page; use after `controls`. */
export const plotStyles = css`
  :host {
    container-type: inline-size;
    min-width: 0;
    --_curve: var(--homeleg-curve, light-dark(#0b6a66, #57bdb1));
  }

  figure {
    margin: 0;
  }

  .title {
    margin: 0 0 8px;
    font-weight: 600;
  }

  .plot {
    position: relative;
    min-height: 14em;
  }

  .plot > svg {
    display: block;
    width: 100%;
    overflow: visible;
    print-color-adjust: exact;
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

  .scale {
    fill: var(--_muted);
  }

  .grid {
    stroke: var(--_line);
  }

  .axis {
    stroke: var(--_edge);
  }

  .band.before {
    fill: var(--_muted);
    opacity: 0.18;
  }

  .band.after {
    fill: var(--_curve);
    opacity: 0.34;
  }

  .line {
    fill: none;
    stroke-width: 3;
    stroke-linejoin: round;
  }

  .line.before {
    stroke: var(--_muted);
    stroke-width: 2;
    stroke-dasharray: 6 4;
  }

  .line.after {
    stroke: var(--_curve);
  }

  .mark {
    stroke: var(--_ink);
    stroke-width: 2;
  }

  .mark.near {
    fill: var(--_ink);
    stroke: var(--_raised);
  }

  .mark.far {
    fill: var(--_raised);
  }

  .mark.aside {
    stroke: var(--_stop);
    stroke-width: 2.5;
    stroke-linecap: round;
  }

  .mark-name {
    font-weight: 600;
    stroke: var(--_raised);
    stroke-width: 4;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .usual {
    fill: var(--_water);
  }

  .zero {
    stroke: var(--_edge);
    stroke-dasharray: 4 3;
  }

  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 18px;
    margin: 8px 0 0;
    padding: 0;
    list-style: none;
  }

  .key li {
    display: flex;
    gap: 8px;
    align-items: center;
  }

  .swatch {
    flex: none;
  }

  details {
    margin-block-start: var(--_gap);
  }

  .scroll {
    max-height: 24em;
    overflow: auto;
  }

  @media (forced-colors: active) {
    :host {
      --_ink: CanvasText;
      --_muted: CanvasText;
      --_raised: Canvas;
      --_stop: CanvasText;
      --_curve: Highlight;
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

    details {
      display: none;
    }
  }
`;
