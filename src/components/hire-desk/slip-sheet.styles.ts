import { css } from 'lit';

/** Measured in millimetres on paper, so that the smallest paper decides and a larger one has room to spare. */
export const slipSheetStyles = css`
  :host {
    container-type: inline-size;
  }

  article {
    display: grid;
    gap: 10px;
    padding: 16px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
    font-size: 0.95em;
  }

  p,
  ul,
  ol,
  dl,
  dd,
  figure {
    margin: 0;
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

  header {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 2px 16px;
    color: var(--_muted);
  }

  .head {
    display: flex;
    gap: 12px;
    align-items: center;
    padding: 8px 12px;
    border: 2px solid var(--_tone);
    border-radius: 6px;
  }

  .head .mark {
    flex: none;
    width: 42px;
    height: 42px;
    color: var(--_tone);
  }

  .answer {
    color: var(--_tone);
    font-size: 1.7em;
    font-weight: 700;
    line-height: 1.1;
  }

  .boat {
    font-weight: 600;
  }

  .times {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 28px;
  }

  .times dd {
    font-size: 1.45em;
    font-weight: 700;
    line-height: 1.15;
    font-variant-numeric: tabular-nums;
  }

  dt {
    color: var(--_muted);
    font-size: 0.86em;
  }

  .middle {
    display: grid;
    gap: 10px 16px;
  }

  .middle dl {
    display: grid;
    gap: 5px;
    align-content: start;
  }

  figure {
    display: grid;
    gap: 4px;
    justify-items: start;
    align-content: start;
  }

  .qr {
    width: min(100%, 230px);
    height: auto;
  }

  figcaption {
    color: var(--_muted);
    font-size: 0.82em;
  }

  ul {
    padding-inline-start: 1.1em;
  }

  .late {
    font-weight: 600;
  }

  .shown {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 240px), 1fr));
    gap: 0 18px;
    padding: 0;
    list-style: none;
  }

  .shown li {
    display: flex;
    gap: 8px;
    justify-content: space-between;
    align-items: end;
    padding-block: 3px;
    border-block-end: 1px solid var(--_line);
  }

  .shown b {
    flex: none;
    min-width: 2.4em;
    text-align: end;
  }

  .sign {
    padding-block-start: 12px;
  }

  .sign span {
    display: inline-block;
    min-width: 60%;
    padding-block-start: 3px;
    border-block-start: 1px solid currentColor;
    color: var(--_muted);
    font-size: 0.82em;
  }

  .small {
    color: var(--_muted);
    font-size: 0.82em;
  }

  @container (min-width: 430px) {
    .middle {
      grid-template-columns: minmax(0, 1fr) minmax(190px, 40%);
    }
  }

  @media print {
    :host {
      color-scheme: only light;
      container-type: normal;
    }

    article {
      gap: 2.2mm;
      padding: 0;
      border: 0;
      font-size: 8.6pt;
      line-height: 1.28;
      break-inside: avoid;
    }

    .head {
      padding: 1.4mm 2.5mm;
      print-color-adjust: exact;
    }

    .head .mark {
      width: 9mm;
      height: 9mm;
    }

    .answer {
      font-size: 15pt;
    }

    .times dd {
      font-size: 13pt;
    }

    .middle {
      grid-template-columns: minmax(0, 1fr) 54mm;
    }

    .middle dl {
      gap: 1.2mm;
    }

    .qr {
      width: 54mm;
    }

    .shown {
      grid-template-columns: 1fr 1fr;
      gap: 0 6mm;
    }

    .shown li {
      padding-block: 0.7mm;
    }

    .sign {
      padding-block-start: 7mm;
    }
  }
`;
