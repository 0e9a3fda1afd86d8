import { css } from 'lit';

/** What the further answers share: signs of the answer, and tables whose rows become cards in a narrow place. */
export const answersStyles = css`
  :host {
    container-type: inline-size;
  }

  p,
  ul,
  dl,
  dd,
  h4 {
    margin: 0;
  }

  .stack {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--_gap);
  }

  .empty {
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  .go {
    --_tone: var(--_go);
  }

  .marginal {
    --_tone: var(--_doubt);
  }

  .no-go {
    --_tone: var(--_stop);
  }

  .verdict {
    display: inline-flex;
    gap: 8px;
    align-items: center;
    color: var(--_tone);
    font-weight: 600;
  }

  .verdict .mark {
    flex: none;
    width: 26px;
    height: 26px;
  }

  .level {
    flex: none;
    width: 20px;
    height: 20px;
    color: var(--_tone);
  }

  .sub {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
    font-weight: 400;
  }

  caption {
    max-width: 60em;
    font-size: 0.95em;
  }

  thead th {
    vertical-align: bottom;
  }

  tbody th {
    color: var(--_ink);
  }

  .label {
    display: none;
  }

  @container (max-width: 640px) {
    table.cards,
    .cards tbody,
    .cards caption {
      display: block;
    }

    .cards thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    .cards tr {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(8em, 100%), 1fr));
      gap: 6px 12px;
      margin-block-end: 10px;
      padding: 10px 12px 12px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_paper);
    }

    .cards th,
    .cards td,
    .cards td.figure {
      padding: 0;
      border: 0;
      text-align: start;
      white-space: normal;
    }

    .cards tr > th,
    .cards td.whole {
      grid-column: 1 / -1;
    }

    .cards .label {
      display: block;
      color: var(--_muted);
      font-size: 0.85em;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    table {
      font-size: 9pt;
    }

    tr,
    section {
      break-inside: avoid;
    }

    .mark,
    .level {
      print-color-adjust: exact;
    }

    button {
      display: none;
    }
  }
`;
