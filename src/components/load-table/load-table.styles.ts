import { css } from 'lit';

export const loadTableStyles = css`
  :host {
    container-type: inline-size;
  }

  p {
    margin: 0;
  }

  .asks {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: calc(var(--_gap) * 1.5);
  }

  .card {
    padding: 14px 16px 16px;
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    background: var(--_raised);
  }

  /* A floated legend sits inside its frame. */
  .card > legend {
    float: inline-start;
    width: 100%;
    margin-block-end: 10px;
    font-size: 1.15em;
  }

  .card > legend + * {
    clear: both;
  }

  .around {
    margin-block-start: var(--_gap);
    max-width: 34em;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 200px), 1fr));
  }

  .start {
    justify-self: start;
  }

  .card .note {
    padding-inline-start: 12px;
    border-inline-start: 4px solid var(--_accent);
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

  .tells {
    margin-block-start: calc(var(--_gap) * 2.5);
  }

  .over {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 20px;
    align-items: center;
    justify-content: space-between;
  }

  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  h2 {
    margin: 0;
    font-size: 1.5em;
    line-height: 1.2;
  }

  .boat-name {
    color: var(--_muted);
    margin-block-end: 8px;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 60em;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
  }

  .scroll {
    overflow-x: auto;
    margin-block-end: 10px;
  }

  table {
    border-collapse: separate;
    border-spacing: 0;
  }

  caption {
    max-width: 46em;
    text-wrap: pretty;
  }

  thead th {
    min-width: 210px;
    border-block-end: 2px solid var(--_edge);
    vertical-align: bottom;
  }

  thead th:first-child {
    min-width: 6.5em;
  }

  tbody th {
    color: var(--_ink);
  }

  .engine {
    color: var(--_ink);
  }

  .under {
    display: block;
    color: var(--_muted);
    font-size: 0.85em;
    font-weight: 400;
  }

  .of {
    display: none;
  }

  td {
    padding: 10px 12px 12px;
    font-size: 0.95em;
    line-height: 1.4;
  }

  td.go {
    --_tone: var(--_go);
  }

  td.marginal {
    --_tone: var(--_doubt);
  }

  td.no-go {
    --_tone: var(--_stop);
    background: color-mix(in srgb, var(--_stop) 7%, transparent);
  }

  .word {
    padding-inline-start: 9px;
    border-inline-start: 4px solid var(--_line);
    margin-block-end: 6px;
    font-size: 1.06em;
    line-height: 1.3;
  }

  .word .band {
    display: block;
  }

  .word.planes {
    border-inline-start-color: var(--_go);
  }

  .word.marginal {
    border-inline-start: 4px dashed var(--_doubt);
  }

  .word.not strong {
    color: var(--_muted);
  }

  dl {
    margin: 0;
    font-variant-numeric: tabular-nums;
  }

  dl > div {
    display: grid;
    grid-template-columns: minmax(5.6em, auto) minmax(0, 1fr);
    gap: 0 8px;
  }

  dt {
    color: var(--_muted);
  }

  dd {
    margin: 0;
  }

  .band {
    color: var(--_muted);
    font-size: 0.9em;
  }

  .stop,
  td .remark {
    display: flex;
    gap: 6px;
    align-items: flex-start;
    margin-block-start: 6px;
    padding: 0;
    border: 0;
    font-size: 0.93em;
  }

  .stop {
    margin-block: 0 8px;
    color: var(--_stop);
    font-weight: 600;
  }

  .level {
    flex: none;
    width: 16px;
    height: 16px;
    margin-block-start: 0.15em;
    color: var(--_muted);
  }

  .stop .level {
    color: var(--_stop);
  }

  .cautions {
    margin-block-start: 10px;
    padding-block-start: 10px;
    border-block-start: 1px solid var(--_line);
    color: var(--_muted);
    font-size: 0.9em;
  }

  homeleg-closer-look {
    margin-block-start: calc(var(--_gap) * 2.5);
  }

  /* About its room, or what is skipped would be measured over the foot of the page. */
  homeleg-closer-look.below {
    contain-intrinsic-block-size: auto 275rem;
  }

  @container (min-width: 720px) {
    homeleg-closer-look.below {
      contain-intrinsic-block-size: auto 100rem;
    }

    .jump {
      display: none;
    }

    .asks {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      align-items: start;
    }

    .engines {
      grid-column: 1 / -1;
    }
  }

  @container (max-width: 719px) {
    .scroll {
      overflow: visible;
    }

    table,
    thead,
    tbody,
    caption,
    tr,
    th,
    td {
      display: block;
    }

    thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    tbody th {
      padding: 14px 0 6px;
      border: 0;
      font-size: 1.15em;
    }

    tbody th .under {
      display: inline;
    }

    td {
      margin-block-end: 10px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_raised);
    }

    td.no-go {
      background: color-mix(in srgb, var(--_stop) 7%, var(--_raised));
    }

    .of {
      display: block;
      margin-block-end: 4px;
      font-weight: 600;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
      container-type: normal;
    }

    .asks,
    .jump,
    .tools,
    homeleg-closer-look {
      display: none;
    }

    .tells {
      margin: 0;
    }

    .scroll {
      overflow: visible;
    }

    table {
      font-size: 8.5pt;
    }

    thead {
      display: table-header-group;
    }

    thead th {
      min-width: 0;
    }

    td {
      padding: 4px 6px;
    }

    tr {
      break-inside: avoid;
    }

    .word,
    td {
      print-color-adjust: exact;
    }
  }
`;
