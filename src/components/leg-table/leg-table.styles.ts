import { css } from 'lit';

export const legTableStyles = css`
  :host {
    container-type: inline-size;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 8em;
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  table {
    font-size: 0.95em;
  }

  thead th {
    position: sticky;
    top: 0;
    background: var(--_paper);
    vertical-align: bottom;
    white-space: normal;
  }

  thead th.figure,
  .band {
    white-space: normal;
  }

  th,
  td {
    padding-inline: 5px;
  }

  tbody th {
    color: var(--_ink);
    text-align: start;
    white-space: nowrap;
  }

  .label {
    display: none;
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

  .home .number {
    background: light-dark(#64aea6, #2b706b);
    color: light-dark(#06211f, #eaf6f3);
  }

  .part {
    font-weight: 400;
  }

  .ends {
    display: block;
    font-weight: 400;
    white-space: normal;
  }

  .band {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
  }

  .sum th,
  .sum td {
    border-block-end-color: var(--_edge);
    color: var(--_ink);
    font-weight: 600;
  }

  .sum .band {
    font-weight: 400;
  }

  .total th,
  .total td {
    border-block-end: 0;
    font-weight: 700;
  }

  @media screen {
    table:not(.all) .late {
      display: none;
    }
  }

  @container (max-width: 940px) {
    table,
    thead,
    tbody,
    tfoot,
    caption {
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
      grid-template-columns: repeat(auto-fill, minmax(6.2em, 1fr));
      gap: 6px 10px;
      margin-block-end: 10px;
      padding: 10px 12px 12px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_raised);
    }

    th,
    td,
    td.figure {
      padding: 0;
      border: 0;
      text-align: start;
      white-space: normal;
    }

    tr > th {
      grid-column: 1 / -1;
      white-space: normal;
    }

    .ends {
      display: inline;
    }

    .label {
      display: block;
      color: var(--_muted);
      font-size: 0.85em;
    }

    .gap {
      display: none;
    }

    .sum {
      border-color: transparent;
      background: color-mix(in srgb, var(--_water) 70%, var(--_raised));
    }

    .total {
      border-color: var(--_edge);
    }
  }

  @media print {
    :host {
      color-scheme: only light;
      container-type: normal;
    }

    table {
      font-size: 9pt;
    }

    th,
    td {
      padding: 3px 4px;
    }

    thead {
      display: table-header-group;
    }

    /* Sums stand once, at the end, not at the foot of every sheet. */
    tfoot {
      display: table-row-group;
    }

    tr {
      break-inside: avoid;
    }

    .number {
      print-color-adjust: exact;
    }

    button {
      display: none;
    }
  }
`;
