import { css } from 'lit';

/** Cards and questions of the desk. */
export const deskFormStyles = css`
  .card {
    display: grid;
    gap: calc(var(--_gap) * 1.25);
    align-content: start;
    min-width: 0;
    padding: 16px;
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    background: var(--_raised);
  }

  .card > *,
  .ask > * {
    min-width: 0;
  }

  h2,
  h3,
  h4,
  .card p {
    margin: 0;
  }

  .ask > label,
  .ask > .name {
    display: block;
    margin-block-end: 6px;
    font-weight: 600;
  }

  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 10px;
    align-items: center;
  }

  .narrow {
    max-width: 12em;
  }

  .check {
    display: flex;
    gap: 10px;
    align-items: center;
    min-height: var(--_target);
    font-weight: 400;
    cursor: pointer;
  }

  .muted {
    color: var(--_muted);
  }

  .warn {
    padding: 10px 12px;
    border-inline-start: 5px solid var(--_doubt);
    background: color-mix(in srgb, var(--_doubt) 10%, var(--_raised));
    font-weight: 600;
  }

  .refused {
    padding: 10px 12px;
    border-inline-start: 5px solid var(--_stop);
    background: color-mix(in srgb, var(--_stop) 10%, var(--_raised));
    font-weight: 600;
  }

  fieldset legend {
    font-size: 1em;
    font-weight: 600;
  }
`;
