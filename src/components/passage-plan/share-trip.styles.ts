import { css } from 'lit';

export const shareTripStyles = css`
  h3,
  p {
    margin: 0;
  }

  h3 {
    font-size: 1em;
  }

  .sub {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
  }

  .field {
    margin-block-start: 6px;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 8px;
  }

  .said:not(:empty) {
    margin-block-start: 8px;
    font-weight: 600;
  }

  @media print {
    :host {
      display: none;
    }
  }
`;
