import { css } from 'lit';

export const runSheetStyles = css`
  :host {
    container-type: inline-size;
  }

  .why,
  .message,
  h3,
  .sum {
    margin: 0;
  }

  .why {
    color: var(--_muted);
    max-width: 46em;
  }

  .message:empty {
    display: none;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .sheet {
    display: grid;
    gap: var(--_gap);
    margin-block-start: 20px;
    padding-block-start: 20px;
    border-block-start: 1px solid var(--_line);
    grid-template-columns: minmax(0, 1fr);
    overflow-x: auto;
  }

  .sum {
    font-weight: 600;
  }

  tbody th {
    white-space: nowrap;
    font-weight: 400;
  }

  .between td {
    color: var(--_muted);
    font-weight: 600;
    background: color-mix(in srgb, var(--_water) 60%, transparent);
  }

  .blank {
    min-width: 3.2em;
    border-inline-start: 1px solid var(--_line);
  }

  .paper {
    display: none;
  }

  @container (max-width: 560px) {
    .blank {
      display: none;
    }

    thead th:nth-child(n + 3) {
      display: none;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
      container-type: normal;
    }

    .asks,
    .buttons {
      display: none;
    }

    .sheet {
      display: block;
      margin: 0;
      padding: 0;
      border: 0;
      overflow: visible;
    }

    .sheet h3 {
      font-size: 16pt;
      margin-block-end: 6pt;
    }

    .paper {
      display: block;
      margin: 10pt 0;
    }

    .line {
      display: inline-block;
      width: 9em;
      border-block-end: 1px solid #000;
    }

    .line.long {
      width: 20em;
    }

    table {
      font-size: 10.5pt;
    }

    thead {
      display: table-header-group;
    }

    tr {
      break-inside: avoid;
    }

    tbody td:nth-of-type(1) {
      white-space: nowrap;
    }

    tbody tr:not(.between) > * {
      height: 26pt;
      vertical-align: middle;
    }

    .blank {
      display: table-cell;
      width: 11%;
      border: 1px solid #888;
    }

    .blank.wide {
      width: 20%;
    }
  }
`;
