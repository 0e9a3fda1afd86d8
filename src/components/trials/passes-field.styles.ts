import { css } from 'lit';

export const passesStyles = css`
  .passes {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 250px), 1fr));
    gap: var(--_gap);
  }

  .pass {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto auto;
    gap: 6px;
    align-items: end;
  }

  svg path {
    fill: none;
    stroke: currentColor;
    stroke-width: 2;
    stroke-linecap: round;
    stroke-linejoin: round;
  }

  .tools {
    margin-block-start: var(--_gap);
  }

  .stream {
    margin-block-start: var(--_gap);
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 220px), 1fr));
  }

  .found {
    margin: 10px 0 0;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .found:empty {
    display: none;
  }
`;
