import { css } from 'lit';

/** What only the map of waters shows: stream places by their short names. */
export const watersMapStyles = css`
  .stream-place span {
    position: absolute;
    translate: -50% -50%;
    min-inline-size: 18px;
    padding: 0 3px;
    border: 1px solid var(--_ink);
    border-radius: 9px;
    background: var(--_raised);
    font-size: 11px;
    line-height: 16px;
    text-align: center;
    white-space: nowrap;
  }
`;
