import { css } from 'lit';

/** Taking a table in: where it is from, what its columns mean, what comes of it. */
export const importStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--_gap);
  }

  p,
  h4 {
    margin: 0;
  }

  .field {
    display: grid;
    gap: 6px;
    align-content: start;
  }
`;
