import { css } from 'lit';

/** Forms of a run and of a refill. */
export const entryFormStyles = css`
  :host {
    container-type: inline-size;
  }

  h3 {
    margin: 0;
    font-size: 1.15em;
  }

  h3:focus-visible {
    outline-offset: 4px;
  }

  .setup-field {
    grid-column: 1 / -1;
    max-width: 32em;
  }

  .fields > .check {
    align-self: end;
  }

  .spent {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) auto;
    gap: 8px;
    align-items: end;
    max-width: 24em;
  }

  .spent-list {
    display: grid;
    gap: var(--_gap);
  }

  .tools {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: var(--_gap);
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .spent svg path {
    fill: none;
    stroke: currentColor;
    stroke-width: 2;
  }

  @container (max-width: 420px) {
    .buttons > * {
      flex: 1;
    }
  }
`;
