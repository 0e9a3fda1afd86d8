import { css } from 'lit';

export const savedStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 14px;
    container-type: inline-size;
  }

  p,
  ul {
    margin: 0;
  }

  ul {
    display: grid;
    gap: 8px;
    padding: 0;
    list-style: none;
  }

  li {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 12px;
    align-items: center;
    padding: 6px 12px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  .called {
    flex: 1 1 12em;
    min-width: 0;
    font-weight: 600;
  }

  .sub {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
    font-weight: 400;
  }

  .buttons,
  .rename {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 8px;
    align-items: end;
  }

  .rename {
    flex: 1 1 16em;
  }

  .rename label {
    flex: 1 1 10em;
  }

  .said:empty {
    display: none;
  }

  .pair {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 200px), 1fr));
    gap: 12px;
    margin-block-end: 10px;
  }

  @container (max-width: 420px) {
    .side tr {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      border-block-end: 1px solid var(--_line);
    }

    .side tr > * {
      border: 0;
      padding: 2px 4px;
      overflow-wrap: anywhere;
    }

    .side tr > :first-child {
      grid-column: 1 / -1;
      padding-block-start: 6px;
    }
  }

  .file {
    position: relative;
  }

  @media print {
    :host {
      display: none;
    }
  }
`;
