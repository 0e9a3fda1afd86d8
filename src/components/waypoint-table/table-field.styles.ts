import { css } from 'lit';

/** Fields of the table and of the forms round it: a label, the unit inside the frame, what is wrong below. */
export const tableFieldStyles = css`
  .fields {
    display: flex;
    flex-wrap: wrap;
    align-items: start;
    gap: 8px;
    margin-block-start: var(--_gap);
  }

  .fields .field {
    flex: 0 1 14em;
  }

  .fields label,
  .title {
    font-weight: 600;
  }

  .round {
    align-items: end;
  }

  .round .field {
    flex: 0 1 22em;
  }

  #said:empty {
    display: none;
  }

  #said {
    margin: 6px 0 0;
  }

  .framed {
    align-items: end;
    padding: 10px;
    border: 1px dashed var(--_edge);
    border-radius: var(--_radius);
  }

  .framed label {
    font-weight: 400;
  }

  .framed .field {
    flex: 1 1 7.5em;
  }

  .framed .long {
    flex: 3 1 15em;
  }

  .title {
    flex: 1 0 100%;
    margin: 0;
  }

  .box {
    position: relative;
    display: block;
  }

  .box input {
    font-variant-numeric: tabular-nums;
  }

  .box:has(.unit) input {
    padding-inline-end: 2.9em;
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
