import { css } from 'lit';

export const startTimesStyles = css`
  .hours {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(62px, 1fr));
    gap: 6px;
    padding: 0;
    list-style: none;
  }

  .hour {
    position: relative;
    display: grid;
    gap: 2px;
    justify-items: center;
    align-content: start;
    width: 100%;
    height: 100%;
    padding: 6px 2px;
    border-block-end: 5px solid var(--_tone);
  }

  .hour .mark {
    width: 22px;
    height: 22px;
    color: var(--_tone);
  }

  .hour[aria-pressed='true'] {
    box-shadow: inset 0 0 0 2px var(--_accent);
  }

  .clock {
    font-variant-numeric: tabular-nums;
    font-weight: 600;
  }

  .note {
    font-size: 0.75em;
    line-height: 1.15;
  }

  .said {
    font-weight: 600;
  }
`;
