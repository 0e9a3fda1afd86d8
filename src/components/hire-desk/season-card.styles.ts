import { css } from 'lit';

export const seasonCardStyles = css`
  :host {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .sheet {
    display: grid;
    gap: 10px;
    grid-template-columns: minmax(0, 1fr);
    padding: 18px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
  }

  .sheet p,
  .sheet ul,
  .sheet h3 {
    margin: 0;
  }

  .sheet header {
    display: flex;
    flex-wrap: wrap;
    gap: 2px 16px;
    align-items: baseline;
    justify-content: space-between;
  }

  .sheet h3 {
    font-size: 1.5em;
  }

  .sheet ul {
    padding-inline-start: 1.1em;
  }

  .scroll {
    overflow-x: auto;
  }

  th small {
    display: block;
    font-weight: 400;
  }

  th.figure {
    white-space: normal;
  }

  td {
    font-size: 1.25em;
    font-weight: 700;
  }

  .none {
    color: var(--_muted);
    font-weight: 400;
  }

  progress {
    width: 140px;
    accent-color: var(--_accent);
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .off-paper {
      display: none;
    }

    .sheet {
      gap: 2.5mm;
      padding: 0;
      border: 0;
      font-size: 9pt;
      line-height: 1.3;
      break-inside: avoid;
    }

    .scroll {
      overflow: visible;
    }

    th,
    td {
      padding: 1.2mm 1.5mm;
    }
  }
`;
