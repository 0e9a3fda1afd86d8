import { css } from 'lit';

export const trackPlotStyles = css`
  .inner {
    overflow: hidden;
  }

  .speed {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
    stroke-linejoin: round;
  }

  .stretch {
    fill: var(--_curve);
    opacity: 0.22;
  }

  .stretch.alone {
    fill: var(--_muted);
    opacity: 0.16;
  }

  .mean {
    fill: none;
    stroke: var(--_curve);
    stroke-width: 3;
  }

  .stretch-name {
    font-weight: 700;
  }

  .handle {
    cursor: ew-resize;
    touch-action: none;
    outline: none;
  }

  .grip {
    fill: transparent;
  }

  .edge {
    stroke: var(--_curve);
    stroke-width: 2;
  }

  .knob {
    fill: var(--_curve);
  }

  .handle:focus-visible .edge {
    stroke: var(--_ink);
    stroke-width: 4;
  }

  .handle:focus-visible .knob {
    fill: var(--_ink);
  }

  .handle:focus-visible .grip {
    fill: var(--_curve);
    opacity: 0.3;
  }

  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
    margin-block-start: 8px;
  }

  @media (forced-colors: active) {
    .stretch {
      fill: none;
      stroke: CanvasText;
      opacity: 1;
    }
  }

  @media print {
    .tools,
    .hint {
      display: none;
    }
  }
`;
