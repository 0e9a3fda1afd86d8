import { css } from 'lit';

export const speedChoiceStyles = css`
  .trade {
    display: block;
    width: 100%;
    font-family: inherit;
  }

  text {
    fill: var(--_ink);
  }

  .tick {
    fill: var(--_muted);
  }

  .strong,
  .name {
    font-weight: 600;
  }

  .name {
    fill: var(--_ink);
    stroke: var(--_raised);
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .rule {
    stroke: var(--_line);
  }

  .hatch {
    stroke: var(--_muted);
    stroke-width: 1.5px;
    opacity: 0.55;
  }

  .empty-line {
    stroke: var(--_stop);
    stroke-width: 2px;
  }

  .due {
    stroke: var(--_ink);
    stroke-dasharray: 5 4;
  }

  .line {
    fill: none;
    stroke: var(--_accent);
    stroke-width: 2.5px;
    stroke-linejoin: round;
  }

  .dot {
    fill: var(--_accent);
  }

  .shape {
    fill: var(--_accent);
    stroke: var(--_raised);
    stroke-width: 2px;
  }

  .shape.present {
    fill: var(--_raised);
    stroke: var(--_ink);
    stroke-width: 2.5px;
  }

  .marks {
    display: grid;
    padding: 0;
    list-style: none;
  }

  .marks li {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 12px;
    align-items: center;
    padding-block: 6px;
    border-block-end: 1px solid var(--_line);
  }

  .marks li > div {
    flex: 1 1 12em;
  }

  .signs {
    display: inline-flex;
    flex-wrap: wrap;
    gap: 2px;
    min-width: 26px;
  }

  .signs svg {
    width: 22px;
    height: 22px;
  }

  .figures {
    display: block;
    font-variant-numeric: tabular-nums;
  }

  .none {
    color: var(--_stop);
    font-weight: 600;
  }

  .taken {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
  }

  .taken:not(:has(button)) > p:empty {
    display: none;
  }

  td.whole {
    text-align: end;
  }

  @container (max-width: 640px) {
    td.whole {
      text-align: start;
    }
  }

  @media (forced-colors: active) {
    text {
      fill: CanvasText;
      stroke: none;
    }

    .line,
    .due,
    .empty-line,
    .hatch,
    .rule {
      stroke: CanvasText;
    }

    .dot,
    .shape {
      fill: CanvasText;
      stroke: Canvas;
    }

    .shape.present {
      fill: Canvas;
      stroke: CanvasText;
    }
  }
`;
