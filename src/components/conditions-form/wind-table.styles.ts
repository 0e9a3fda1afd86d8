import { css } from 'lit';

export const windTableStyles = css`
  :host {
    container-type: inline-size;
  }

  .stack {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--_gap);
  }

  p {
    margin: 0;
  }

  th,
  td {
    padding: 4px 6px 4px 0;
    border: 0;
  }

  th {
    font-size: 0.9em;
    vertical-align: bottom;
  }

  td:last-child {
    width: var(--_target);
    padding-inline-end: 0;
  }

  td .problem {
    font-size: 0.85em;
  }

  .time {
    min-width: 12.5em;
  }

  .label {
    display: none;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .reach {
    padding: 8px 12px;
    border-inline-start: 4px solid var(--_go);
    background: var(--_paper);
  }

  .reach.short {
    border-color: var(--_doubt);
  }

  details > .inside {
    padding-block: 4px;
  }

  @container (max-width: 560px) {
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
      position: relative;
      display: grid;
      grid-template-columns: repeat(3, minmax(0, 1fr));
      gap: 6px 8px;
      margin-block-end: 10px;
      padding: 8px 10px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_paper);
    }

    td {
      padding: 0;
    }

    td.time {
      grid-column: 1 / -1;
      min-width: 0;
      padding-inline-end: calc(var(--_target) + 8px);
    }

    td:last-child {
      position: absolute;
      inset-block-start: 30px;
      inset-inline-end: 8px;
    }

    .label {
      display: block;
      color: var(--_muted);
      font-size: 0.85em;
    }
  }
`;
