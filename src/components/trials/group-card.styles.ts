import { css } from 'lit';

export const groupCardStyles = css`
  .found {
    margin: 0;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .odd {
    color: var(--_doubt);
  }
`;
