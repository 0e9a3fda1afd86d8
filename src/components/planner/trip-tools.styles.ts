import { css } from 'lit';

export const tripToolsStyles = css`
  :host {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }

  label {
    flex: 1 1 9rem;
    max-width: 14rem;
    color: var(--_muted);
    font-size: 0.875em;
  }

  select {
    color: var(--_ink);
  }

  summary {
    min-height: var(--_target);
    display: flex;
    align-items: center;
    padding-inline: 8px;
    color: var(--_accent);
    cursor: pointer;
  }

  .steps {
    display: flex;
  }

  .steps [aria-disabled='true'] {
    text-decoration: none;
    border-color: transparent;
  }

  details > div {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    padding-block-start: 8px;
  }

  details[open] {
    flex-basis: 100%;
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
