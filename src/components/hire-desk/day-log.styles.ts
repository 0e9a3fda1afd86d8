import { css } from 'lit';

/** On a narrow screen each hire is a card, name before each figure. */
export const dayLogStyles = css`
  :host {
    container-type: inline-size;
  }

  .days {
    display: flex;
    gap: 8px;
    align-items: center;
  }

  .only-paper {
    display: none;
  }

  thead {
    position: absolute;
    display: block;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }

  table,
  tbody,
  tr,
  td {
    display: block;
  }

  tr {
    padding-block: 8px;
    border-block-end: 2px solid var(--_line);
  }

  td {
    display: flex;
    gap: 12px;
    justify-content: space-between;
    padding: 3px 0;
    border: 0;
  }

  .empty {
    display: none;
  }

  .name {
    color: var(--_muted);
  }

  @container (min-width: 900px) {
    thead {
      position: static;
      width: auto;
      height: auto;
      clip-path: none;
      display: table-header-group;
    }

    table {
      display: table;
      font-size: 0.9em;
    }

    tbody {
      display: table-row-group;
    }

    tr {
      display: table-row;
    }

    td,
    .empty {
      display: table-cell;
      padding: 6px 8px;
      border-block-end: 1px solid var(--_line);
    }

    .name {
      display: none;
    }
  }

  @media print {
    :host {
      container-type: normal;
    }

    .off-paper {
      display: none;
    }

    .only-paper {
      display: inline;
    }

    .card {
      padding: 0;
      border: 0;
    }

    h2 {
      font-size: 12pt;
    }

    thead {
      position: static;
      width: auto;
      height: auto;
      clip-path: none;
      display: table-header-group;
    }

    table {
      display: table;
      font-size: 7.6pt;
    }

    tbody {
      display: table-row-group;
    }

    tr {
      display: table-row;
      break-inside: avoid;
    }

    td,
    .empty {
      display: table-cell;
      padding: 1mm;
      border-block-end: 0.3pt solid var(--_line);
    }

    .name {
      display: none;
    }
  }
`;
