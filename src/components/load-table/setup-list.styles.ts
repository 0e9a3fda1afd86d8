import { css } from 'lit';

export const setupListStyles = css`
  :host {
    container-type: inline-size;
  }

  ol {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 280px), 1fr));
    gap: calc(var(--_gap) * 1.5);
    margin: 0 0 var(--_gap);
    padding: 0;
    list-style: none;
  }

  li {
    min-width: 0;
    padding-block-start: 10px;
    border-block-start: 3px solid var(--_accent);
  }

  .fields {
    grid-template-columns: repeat(2, minmax(0, 1fr));
  }

  .wide {
    grid-column: 1 / -1;
  }

  .quiet {
    margin: 4px 0 0 -8px;
  }
`;
