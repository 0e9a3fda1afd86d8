import { css } from 'lit';

export const passagePlanStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 14px;
  }

  h3,
  p {
    margin: 0;
  }

  h3 {
    font-size: 1em;
  }

  textarea {
    min-height: 64px;
    resize: vertical;
  }

  .empty {
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .note {
    padding: 10px 14px;
    border-inline-start: 4px solid var(--_stop);
    background: var(--_paper);
    font-weight: 600;
  }

  .said:not(:empty) {
    font-weight: 600;
  }

  .message {
    width: 100%;
    min-height: 9em;
  }

  .preview > homeleg-sheet-paper {
    padding-block: 4px;
  }

  @media print {
    :host > :not(.paper) {
      display: none;
    }
  }

  @media screen {
    .paper {
      display: none;
    }
  }
`;
