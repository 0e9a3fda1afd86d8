import { css } from 'lit';

export const morningFormStyles = css`
  .of-one {
    padding-block: 8px;
    border-block-end: 1px solid var(--_line);
  }

  .of-one > strong {
    grid-column: 1 / -1;
    font-weight: 500;
  }
`;
