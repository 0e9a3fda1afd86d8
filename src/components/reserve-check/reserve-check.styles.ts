import { css } from 'lit';

export const reserveCheckStyles = css`
  :host {
    container-type: inline-size;
    /* In a dialog or a float, whose width follows what is in it: this one, or what there is room for. */
    contain-intrinsic-inline-size: 68rem;
  }

  .desk {
    display: grid;
    gap: calc(var(--_gap) * 2);
    grid-template-columns: minmax(0, 1fr);
  }

  .asks,
  .tells {
    display: grid;
    gap: calc(var(--_gap) * 1.25);
    align-content: start;
    min-width: 0;
  }

  .asks {
    background: var(--_raised);
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    padding: 16px;
  }

  .asks > label,
  .asks label[for] {
    font-weight: 600;
  }

  .asks p {
    margin: 4px 0 0;
  }

  .asks select {
    font-weight: 400;
    margin-block-start: 6px;
  }

  .asks summary {
    min-height: var(--_target);
    display: flex;
    align-items: center;
    font-weight: 600;
    cursor: pointer;
  }

  .asks details > p {
    margin: 0 12px 12px;
  }

  .back {
    margin: 0;
    font-size: 1.4em;
    font-weight: 700;
  }

  h3 {
    margin: 0;
  }

  .seats {
    margin: 0;
    padding-inline-start: 1.2em;
  }

  @container (min-width: 820px) {
    .desk {
      grid-template-columns: minmax(320px, 1fr) minmax(0, 1.2fr);
      align-items: start;
    }
  }

  @media print {
    .asks,
    .print {
      display: none;
    }
  }
`;
