import { css } from 'lit';

export const fillStyles = css`
  .levels {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }

  .levels button {
    flex: 1 1 auto;
    padding-inline: 10px;
  }

  .quarter {
    font-size: 1.1em;
  }

  .exact {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 150px), 1fr));
    gap: 0 var(--_gap);
    margin-block: 10px;
  }

  .slider label {
    display: flex;
    justify-content: space-between;
    gap: 8px;
  }

  .amount {
    font-weight: 400;
    font-variant-numeric: tabular-nums;
  }

  .unset {
    opacity: 0.45;
  }
`;
