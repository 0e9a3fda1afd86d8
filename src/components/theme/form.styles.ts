import { css } from 'lit';

/** Layout of the forms: groups one below the other, fields side by side as far as the element is wide. */
export const formStyles = css`
  form,
  .stack {
    display: grid;
    gap: 22px;
  }

  .stack > *,
  .fields > * {
    min-width: 0;
  }

  .stack.close {
    gap: var(--_gap);
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 140px), 1fr));
    gap: var(--_gap);
    align-items: start;
  }

  .fields > .hint {
    grid-column: 1 / -1;
    margin: 0;
  }

  .fields.wide {
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 230px), 1fr));
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
    font-weight: 500;
  }

  .more {
    margin-block-start: var(--_gap);
  }

  .nested {
    margin-inline-start: 32px;
    max-width: 260px;
  }

  .fixed {
    margin: 0;
    padding-inline-start: 1.2em;
  }
`;
