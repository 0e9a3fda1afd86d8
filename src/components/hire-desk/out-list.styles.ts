import { css } from 'lit';

export const outListStyles = css`
  :host {
    container-type: inline-size;
  }

  .card > ul {
    display: grid;
    gap: 10px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .hire {
    display: grid;
    gap: 10px;
    padding: 10px 12px;
    border: 1px solid var(--_line);
    border-inline-start: 5px solid var(--_accent);
    border-radius: var(--_radius);
  }

  .due-soon {
    border-inline-start-color: var(--_doubt);
  }

  .overdue {
    border-color: var(--_stop);
    border-inline-start-width: 8px;
    background: color-mix(in srgb, var(--_stop) 8%, var(--_raised));
  }

  .line {
    display: grid;
    gap: 6px 16px;
  }

  .who,
  .when {
    display: grid;
    font-variant-numeric: tabular-nums;
  }

  .count {
    display: flex;
    gap: 6px;
    align-items: center;
  }

  .count .level {
    width: 18px;
    height: 18px;
  }

  .overdue .count {
    color: var(--_stop);
  }

  .steps {
    display: grid;
    gap: 6px;
  }

  .steps ol {
    margin: 0;
    padding-inline-start: 1.3em;
  }

  .steps li:last-child {
    font-weight: 700;
  }

  @container (min-width: 560px) {
    .line {
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) auto;
      align-items: center;
    }
  }
`;
