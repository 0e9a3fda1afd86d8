import { css } from 'lit';

/** Buttons, one of them with a file picker unseen behind it. */
export const filePickerStyles = css`
  .why {
    margin: 0;
    color: var(--_muted);
    max-width: 46em;
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
`;

/** And a text to paste into instead, and what was amiss with it. */
export const openFileStyles = css`
  ${filePickerStyles}

  textarea {
    margin-block: 4px 8px;
    font-family: ui-monospace, monospace;
    white-space: pre;
  }

  .problems {
    margin: 8px 0 0;
    padding: 10px 14px 10px 30px;
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_paper);
  }
`;
