import { css } from 'lit';

export const setupsStyles = css`
  .one {
    margin: 0;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
`;
