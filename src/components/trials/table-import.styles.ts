import { css } from 'lit';

export const tableImportStyles = css`
  :host {
    display: grid;
    gap: var(--_gap);
    grid-template-columns: minmax(0, 1fr);
  }

  .why,
  .message,
  .sum,
  h3 {
    margin: 0;
  }

  .message:empty {
    display: none;
  }

  .message,
  .sum {
    font-weight: 600;
  }

  h3 {
    font-size: 1.05em;
  }

  .aside {
    color: var(--_muted);
  }
`;
