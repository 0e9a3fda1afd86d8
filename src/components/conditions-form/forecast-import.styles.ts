import { css } from 'lit';

export const forecastImportStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--_gap);
  }

  p,
  h4 {
    margin: 0;
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

  .field {
    display: grid;
    gap: 6px;
    align-content: start;
  }

  .problems {
    margin: 8px 0 0;
    padding: 10px 14px 10px 30px;
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_paper);
  }
`;
