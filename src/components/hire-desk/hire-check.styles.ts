import { css } from 'lit';

export const hireCheckStyles = css`
  :host {
    container-type: inline-size;
  }

  .desk {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .tells {
    display: grid;
    gap: var(--_gap);
    align-content: start;
    min-width: 0;
  }

  @container (min-width: 760px) {
    .desk {
      grid-template-columns: minmax(300px, 1fr) minmax(0, 1.15fr);
      align-items: start;
    }

    .tells {
      position: sticky;
      inset-block-start: 12px;
    }
  }
`;
