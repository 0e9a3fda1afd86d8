import { css } from 'lit';

export const payloadPlotStyles = css`
  p,
  ul {
    margin-block: 6px;
  }

  ul {
    padding-inline-start: 1.1em;
  }

  .plot {
    margin-block-start: 12px;
    min-height: 300px;
  }

  /* Words stay as dark as they were: only the drawing fades. */
  .unsettled svg {
    opacity: 0.6;
  }

  svg {
    display: block;
    max-width: 100%;
    font-variant-numeric: tabular-nums;
  }

  .grid {
    stroke: var(--_line);
  }

  .axis,
  .zero {
    stroke: var(--_edge);
    fill: none;
  }

  .zero {
    stroke-width: 1.5;
  }

  .scale {
    fill: var(--_muted);
    text-anchor: middle;
  }

  .scale.end {
    text-anchor: end;
  }

  text.scale:first-child {
    text-anchor: start;
  }

  .area {
    fill: color-mix(in srgb, var(--_accent) 16%, transparent);
  }

  .area:is(.reserve) {
    fill: color-mix(in srgb, var(--_doubt) 20%, transparent);
  }

  .area:is(.planing, .speed) {
    fill: color-mix(in srgb, var(--_stop) 18%, transparent);
  }

  .line {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2.5;
    stroke-linejoin: round;
  }

  .edge {
    stroke: var(--_edge);
    stroke-dasharray: 2 4;
  }

  .name {
    fill: var(--_muted);
    text-anchor: middle;
  }

  path.here {
    stroke: var(--_accent);
    stroke-width: 2;
    stroke-dasharray: 6 4;
  }

  text.here {
    fill: var(--_accent);
    font-weight: 600;
    text-anchor: middle;
  }

  @media (forced-colors: active) {
    .line,
    .zero,
    .axis {
      stroke: CanvasText;
    }

    text {
      fill: CanvasText;
    }
  }
`;
