import { css } from 'lit';

export const sheetPaperStyles = css`
  :host {
    container-type: inline-size;
  }

  article {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
  }

  h4,
  h5,
  p,
  dl,
  dd,
  ol {
    margin: 0;
  }

  h4 {
    font-size: 1.1em;
  }

  h5 {
    font-size: 1em;
  }

  .answer {
    display: flex;
    gap: 8px;
    align-items: center;
    color: var(--_tone);
  }

  .answer svg {
    flex: none;
    width: 26px;
    height: 26px;
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

  dl > div {
    display: grid;
    grid-template-columns: minmax(0, 10em) minmax(0, 1fr);
    gap: 0 12px;
    padding-block: 4px;
    border-block-end: 1px solid var(--_line);
  }

  dt {
    color: var(--_muted);
  }

  dd {
    white-space: pre-line;
  }

  tbody th {
    color: var(--_ink);
    font-weight: 400;
  }

  th,
  td {
    padding-block: 4px;
  }

  .halves {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 260px), 1fr));
    gap: 0 24px;
    align-items: start;
  }

  .overdue {
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    padding: 10px 14px;
  }

  ol {
    padding-inline-start: 1.4em;
  }

  .cautions {
    color: var(--_muted);
    font-size: 0.9em;
  }

  @container (max-width: 420px) {
    dl > div {
      grid-template-columns: minmax(0, 1fr);
    }

    td.figure {
      white-space: normal;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
      font-size: 9.5pt;
      line-height: 1.3;
    }

    article {
      gap: 6px;
    }

    dl > div {
      grid-template-columns: minmax(0, 9em) minmax(0, 1fr);
      padding-block: 2px;
    }

    th,
    td {
      padding-block: 1px;
      font-size: 9pt;
    }

    tr,
    .overdue,
    dl > div {
      break-inside: avoid;
    }

    .scroll {
      overflow: visible;
    }

    .answer svg {
      print-color-adjust: exact;
    }
  }
`;
