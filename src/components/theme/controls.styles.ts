import { css } from 'lit';

/** Native controls and tables drawn with the tokens; use after `tokens`. Classes: primary, quiet, icon, sr, hint, problem, scroll. */
export const controls = css`
  button,
  input,
  select,
  textarea {
    font: inherit;
    color: inherit;
    letter-spacing: inherit;
  }

  button {
    min-height: var(--_target);
    min-width: var(--_target);
    padding: 6px 16px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
    color: var(--_ink);
    cursor: pointer;
    touch-action: manipulation;
  }

  button:hover {
    border-color: var(--_accent);
  }

  button.primary {
    background: var(--_accent);
    border-color: var(--_accent);
    color: var(--_on-accent);
    font-weight: 600;
  }

  button.quiet {
    background: transparent;
    border-color: transparent;
    color: var(--_accent);
    text-decoration: underline;
    text-underline-offset: 3px;
    padding-inline: 8px;
  }

  button.icon {
    padding: 0;
    display: inline-grid;
    place-items: center;
  }

  button[aria-pressed='true'] {
    border-color: var(--_accent);
    box-shadow: inset 0 0 0 2px var(--_accent);
    font-weight: 600;
  }

  button:disabled,
  button[aria-disabled='true'] {
    color: var(--_muted);
    background: transparent;
    border-style: dashed;
    cursor: not-allowed;
  }

  input:not([type='checkbox'], [type='radio'], [type='range']),
  select,
  textarea {
    min-height: var(--_target);
    width: 100%;
    min-width: 0;
    padding: 8px 10px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
    /* Under 16 px some phones zoom the page when a field gets focus. */
    font-size: max(16px, 1em);
  }

  input[aria-invalid='true'] {
    border-color: var(--_stop);
    box-shadow: inset 0 0 0 1px var(--_stop);
  }

  input::placeholder {
    color: var(--_muted);
    opacity: 1;
  }

  input[type='checkbox'],
  input[type='radio'] {
    width: 22px;
    height: 22px;
    margin: 0;
    flex: none;
    accent-color: var(--_accent);
  }

  input[type='range'] {
    width: 100%;
    min-height: var(--_target);
    margin: 0;
    accent-color: var(--_accent);
  }

  label {
    display: block;
  }

  fieldset {
    min-width: 0;
    margin: 0;
    padding: 0;
    border: 0;
  }

  legend {
    padding: 0;
    margin-block-end: 6px;
    font-size: 1.06em;
    font-weight: 700;
  }

  table {
    width: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }

  caption {
    text-align: start;
    color: var(--_muted);
    padding-block-end: 6px;
  }

  th,
  td {
    padding: 6px 8px;
    text-align: start;
    vertical-align: top;
    border-block-end: 1px solid var(--_line);
  }

  th {
    font-weight: 600;
    color: var(--_muted);
  }

  /* A table with letters too large for the place scrolls there, not the page. Focusable, for the keys. */
  .scroll {
    overflow-x: auto;
  }

  td.figure,
  th.figure {
    text-align: end;
    white-space: nowrap;
  }

  details {
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  summary {
    min-height: var(--_target);
    padding: 10px 12px;
    font-weight: 600;
    cursor: pointer;
    border-radius: var(--_radius);
  }

  details > :not(summary) {
    margin-inline: 12px;
  }

  details > :last-child:not(summary) {
    margin-block-end: 12px;
  }

  /* Shadows and most colours are gone there. */
  @media (forced-colors: active) {
    button[aria-pressed='true'] {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }

    /* Its words would get a plate of the page's colour otherwise. */
    button.primary:not(:disabled) {
      forced-color-adjust: none;
    }

    input[aria-invalid='true'] {
      border-width: 3px;
      border-style: double;
    }
  }

  .hint {
    margin: 4px 0 0;
    color: var(--_muted);
    font-size: 0.9em;
  }

  .problem {
    margin: 4px 0 0;
    color: var(--_stop);
    font-size: 0.9em;
    font-weight: 600;
  }

  .sr {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    padding: 0;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
    border: 0;
  }
`;
