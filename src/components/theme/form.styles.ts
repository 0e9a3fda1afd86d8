import { css } from 'lit';

/** Layout of the forms: groups one below the other, fields side by side as far as the element is wide. */
export const formStyles = css`
  form,
  .stack {
    display: grid;
    gap: 18px;
  }

  .stack.close {
    gap: var(--_gap);
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 200px), 1fr));
    gap: var(--_gap);
    align-items: start;
  }

  .check {
    display: flex;
    align-items: center;
    gap: 10px;
    min-height: var(--_target);
    font-weight: 400;
    cursor: pointer;
  }

  .field label {
    margin-block-end: 4px;
    font-weight: 600;
  }

  .fixed {
    margin: 0;
    padding-inline-start: 1.2em;
  }
`;
