import { css } from 'lit';

export const handOverStyles = css`
  :host {
    container-type: inline-size;
  }

  .halves {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }

  .paper {
    display: grid;
    gap: var(--_gap);
    min-width: 0;
  }

  .of-paper {
    display: flex;
    gap: 8px;
    align-items: center;
  }

  .point {
    border-block-end: 1px solid var(--_line);
  }

  .point span {
    flex: 1;
  }

  .calm {
    border-color: var(--_go);
    background: color-mix(in srgb, var(--_go) 10%, var(--_raised));
  }

  @container (min-width: 820px) {
    .halves {
      grid-template-columns: minmax(300px, 1fr) minmax(0, 1.1fr);
    }
  }

  @media print {
    :host {
      container-type: normal;
    }

    .card,
    .off-paper {
      display: none;
    }

    .halves {
      display: block;
    }
  }
`;
