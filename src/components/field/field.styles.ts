import { css } from 'lit';

/** A label over its control, the unit inside the frame, messages under it. */
export const fieldStyles = css`
  label,
  .label {
    margin-block-end: 4px;
    font-weight: 500;
  }

  .row {
    display: flex;
    gap: 6px;
  }

  .figure {
    position: relative;
    flex: 1;
    min-width: 0;
  }

  .figure input {
    padding-inline-end: 3.6em;
    font-variant-numeric: tabular-nums;
  }

  .unit {
    position: absolute;
    inset-block: 0;
    inset-inline-end: 10px;
    display: grid;
    align-items: center;
    color: var(--_muted);
    pointer-events: none;
  }
`;
