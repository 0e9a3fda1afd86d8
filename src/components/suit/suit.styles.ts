import { css } from 'lit';

export const suitStyles = css`
  :host {
    container-type: inline-size;
  }

  p,
  h2,
  h3,
  h4 {
    margin: 0;
  }

  .desk {
    display: grid;
    gap: calc(var(--_gap) * 2);
    grid-template-columns: minmax(0, 1fr);
  }

  .asks,
  .tells {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    align-content: start;
    min-width: 0;
  }

  .tells {
    gap: var(--_gap);
  }

  .asks {
    padding: 16px;
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    background: var(--_raised);
  }

  .jump {
    width: 100%;
  }

  /* At hand while somebody fills in; over nothing else before that. */
  .asks:focus-within .jump {
    position: sticky;
    inset-block-end: 10px;
    z-index: 1;
    box-shadow: 0 4px 14px light-dark(rgb(16 32 31 / 0.25), rgb(0 0 0 / 0.5));
  }

  h2 {
    font-size: clamp(1.4em, 6cqi, 2em);
    line-height: 1.15;
    color: var(--_go);
  }

  h2.none {
    color: var(--_stop);
  }

  h3 {
    margin-block-start: 14px;
    font-size: 1.15em;
  }

  .progress {
    min-height: 1.45em;
    color: var(--_muted);
    font-variant-numeric: tabular-nums;
  }

  .empty {
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  .cards {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 290px), 1fr));
    gap: var(--_gap);
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .cards li {
    min-width: 0;
  }

  .cards > li {
    display: grid;
    gap: 8px;
    align-content: start;
    padding: 12px 14px 14px;
    border: 1px solid var(--_line);
    border-block-start: 4px solid var(--_tone);
    border-radius: var(--_radius);
    background: var(--_raised);
  }

  .fits {
    --_tone: var(--_go);
  }

  .cards > .doubtful {
    --_tone: var(--_doubt);
    border-block-start-style: dashed;
  }

  h4 {
    font-size: 1.08em;
    line-height: 1.25;
  }

  .with {
    color: var(--_muted);
    line-height: 1.35;
  }

  .bar {
    width: 100%;
    height: 16px;
    border: 1.5px solid var(--_ink);
    border-radius: 5px;
  }

  .full {
    fill: transparent;
  }

  .kept {
    fill: color-mix(in srgb, var(--_doubt) 28%, transparent);
  }

  .need {
    fill: var(--_accent);
  }

  .spread {
    fill: var(--_ink);
    opacity: 0.55;
  }

  .reasons {
    display: grid;
    gap: 6px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .reasons li {
    display: flex;
    gap: 8px;
  }

  .level {
    flex: none;
    width: 18px;
    height: 18px;
    margin-block-start: 0.15em;
    color: var(--_tone);
  }

  dl {
    margin: 0;
    font-size: 0.95em;
    font-variant-numeric: tabular-nums;
  }

  dl > div {
    display: grid;
    grid-template-columns: minmax(0, 5fr) minmax(0, 6fr);
    gap: 0 8px;
    padding-block: 2px;
    border-block-start: 1px solid var(--_line);
  }

  dt {
    color: var(--_muted);
  }

  dd {
    margin: 0;
  }

  .band {
    color: var(--_muted);
    font-size: 0.92em;
  }

  .tells > button {
    justify-self: start;
  }

  .outs {
    display: grid;
    gap: 8px;
  }

  .outs ul {
    padding-inline-start: 1.1em;
  }

  .outs li {
    margin-block-end: 4px;
  }

  .outs strong {
    font-weight: 600;
  }

  .cautions {
    padding-block-start: 10px;
    border-block-start: 1px solid var(--_line);
    color: var(--_muted);
    font-size: 0.9em;
  }

  @container (min-width: 820px) {
    .jump {
      display: none;
    }

    .desk {
      grid-template-columns: minmax(290px, 1fr) minmax(0, 2.2fr);
      align-items: start;
    }
  }

  @media (forced-colors: active) {
    .bar {
      forced-color-adjust: none;
      background: Canvas;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .asks,
    .jump,
    .tells > button,
    .progress {
      display: none;
    }

    .cards > li {
      break-inside: avoid;
    }

    .bar {
      print-color-adjust: exact;
    }
  }
`;
