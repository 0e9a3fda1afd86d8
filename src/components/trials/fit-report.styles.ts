import { css } from 'lit';

export const fitReportStyles = css`
  :host {
    container-type: inline-size;
  }

  .lead {
    margin: 0 0 var(--_gap);
    font-size: 1.1em;
    font-weight: 600;
  }

  .asides {
    margin: 0 0 calc(var(--_gap) * 1.5);
    padding: 0;
    list-style: none;
  }

  .asides li {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    align-items: center;
    justify-content: space-between;
    padding: 2px 0 2px 12px;
    border-inline-start: 4px solid var(--_doubt);
    border-block-end: 1px solid var(--_line);
  }

  .columns {
    display: grid;
    gap: 28px 32px;
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }

  .fouling {
    max-width: 40em;
    margin-block-end: calc(var(--_gap) * 1.5);
  }

  .paper {
    display: none;
    margin: 0;
  }

  .helpful {
    margin: 0 0 18px;
    padding-inline-start: 1.4em;
  }

  .choices {
    margin-block-end: var(--_gap);
  }

  h3 {
    margin: 0 0 8px;
    font-size: 1em;
  }

  dl,
  dd,
  ul {
    margin: 0;
  }

  dl > div {
    display: flex;
    flex-wrap: wrap;
    gap: 0 12px;
    justify-content: space-between;
    padding-block: 5px;
    border-block-end: 1px solid var(--_line);
  }

  dt::first-letter {
    text-transform: uppercase;
  }

  dd {
    font-variant-numeric: tabular-nums;
  }

  section > ul {
    display: grid;
    gap: 6px;
    padding-inline-start: 1.1em;
  }

  .cautions {
    margin-block-start: 20px;
    padding: 10px 0 0;
    border-block-start: 1px solid var(--_line);
    list-style: none;
    color: var(--_muted);
    font-size: 0.9em;
  }

  @container (min-width: 820px) {
    .columns {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
    }
  }

  @media print {
    .asides .acts,
    .fouling > :not(.paper),
    .choices {
      display: none;
    }

    .paper {
      display: block;
    }

    section {
      break-inside: avoid;
    }
  }
`;
