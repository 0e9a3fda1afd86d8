import { css } from 'lit';

export const closerLookStyles = css`
  :host {
    display: block;
    container-type: inline-size;
  }

  h2,
  h3,
  p {
    margin: 0;
  }

  h2 {
    font-size: 1.5em;
    line-height: 1.2;
  }

  h3 {
    font-size: 1.15em;
    margin-block-end: 10px;
  }

  .pick {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 260px), 1fr));
    max-width: 46em;
    margin-block: 12px;
  }

  .part {
    padding-block: 16px;
    border-block-start: 1px solid var(--_line);
  }

  .part .fields {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 210px), 1fr));
    max-width: 46em;
  }

  .window {
    grid-column: span 2;
  }

  .window legend {
    font-size: 1em;
    font-weight: 500;
    margin-block-end: 4px;
  }

  .pair {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 0 var(--_gap);
  }

  .said {
    display: grid;
    gap: 6px;
    max-width: 46em;
    margin-block: 14px;
    padding: 12px 14px;
    border-inline-start: 5px solid var(--_tone);
    border-radius: 0 var(--_radius) var(--_radius) 0;
    background: color-mix(in srgb, var(--_tone) 8%, var(--_raised));
  }

  .fine {
    --_tone: var(--_go);
  }

  .doubt {
    --_tone: var(--_doubt);
  }

  details {
    max-width: 46em;
  }

  .scroll {
    overflow-x: auto;
  }

  .changes {
    margin-block-start: 14px;
  }

  .changes thead th {
    vertical-align: bottom;
    white-space: normal;
  }

  .changes tbody th {
    color: var(--_ink);
    min-width: 15em;
    max-width: 22em;
  }

  .changes td.figure {
    white-space: normal;
    min-width: 6.5em;
  }

  .why {
    display: block;
    color: var(--_muted);
    font-size: 0.88em;
    font-weight: 400;
  }

  .changes .sure {
    min-width: 9em;
  }

  .label {
    display: none;
  }

  tr.now > * {
    border-block-end-color: var(--_edge);
    font-weight: 600;
  }

  @container (max-width: 430px) {
    .window {
      grid-column: auto;
    }
  }

  @container (max-width: 760px) {
    .changes table,
    .changes thead,
    .changes tbody {
      display: block;
    }

    .changes thead {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    .changes tr {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(100%, 7.5em), 1fr));
      gap: 6px 12px;
      margin-block-end: 10px;
      padding: 10px 12px 12px;
      border: 1px solid var(--_line);
      border-radius: var(--_radius);
      background: var(--_raised);
    }

    .changes th,
    .changes td,
    .changes td.figure {
      padding: 0;
      border: 0;
      max-width: none;
      min-width: 0;
      text-align: start;
    }

    .changes tr > th,
    .changes .sure {
      grid-column: 1 / -1;
      min-width: 0;
    }

    .label {
      display: block;
      color: var(--_muted);
      font-size: 0.85em;
    }
  }
`;
