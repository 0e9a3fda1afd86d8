import { css } from 'lit';

export const tableImportStyles = css`
  :host {
    display: grid;
    gap: var(--_gap);
    grid-template-columns: minmax(0, 1fr);
  }

  .why,
  .message,
  .sum,
  h3 {
    margin: 0;
  }

  .why {
    color: var(--_muted);
    max-width: 46em;
  }

  .message:empty {
    display: none;
  }

  .message,
  .sum {
    font-weight: 600;
  }

  h3 {
    font-size: 1.05em;
  }

  .buttons {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  input[type='file'] {
    position: absolute;
    width: 1px;
    height: 1px;
    min-height: 0;
    opacity: 0;
    pointer-events: none;
  }

  textarea {
    margin-block: 4px 8px;
    font-family: ui-monospace, monospace;
    white-space: pre;
  }

  .aside {
    color: var(--_muted);
  }

  .problems {
    margin: 8px 0 0;
    padding: 10px 14px 10px 30px;
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_paper);
  }
`;
