import { css } from 'lit';

/** Tables whose rows become cards where it is narrow. */
export const rowTableStyles = css`
  :host {
    container-type: inline-size;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 6em;
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  table {
    font-size: 0.95em;
  }

  tbody th {
    color: var(--_ink);
  }

  .number {
    display: inline-grid;
    place-items: center;
    min-width: 1.9em;
    padding-inline: 0.3em;
    border-radius: 1em;
    background: light-dark(#0b6a66, #57bdb1);
    color: light-dark(#ffffff, #06211f);
    font-size: 0.9em;
  }

  .aside .number {
    background: transparent;
    color: var(--_ink);
    box-shadow: inset 0 0 0 1px var(--_edge);
  }

  .day {
    font-weight: 400;
    white-space: nowrap;
  }

  .small {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
    font-weight: 400;
  }

  .flag {
    font-weight: 600;
    color: var(--_doubt);
  }

  .flag.left-out {
    color: var(--_muted);
  }

  .label {
    display: none;
  }

  .acts {
    padding-block: 0;
  }

  .acts button {
    padding-inline: 6px;
  }

  @container (max-width: 900px) {
    table,
    tbody {
      display: block;
    }

    thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    tr {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(100%, 8em), 1fr));
      gap: 6px 12px;
      margin-block-end: 10px;
      padding: 10px 12px 4px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_raised);
    }

    th,
    td {
      padding: 0;
      border: 0;
    }

    tr > th,
    tr > .acts {
      grid-column: 1 / -1;
    }

    /* Nothing to be said of a run that simply counts. */
    .state.fine {
      display: none;
    }

    .state {
      grid-column: 1 / -1;
    }

    .state .label {
      display: none;
    }

    .label {
      display: block;
      color: var(--_muted);
      font-size: 0.85em;
    }
  }

  @media (forced-colors: active) {
    .number {
      border: 1px solid CanvasText;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .acts,
    thead th:last-child {
      display: none;
    }

    tr {
      break-inside: avoid;
    }
  }
`;
