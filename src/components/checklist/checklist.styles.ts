import { css } from 'lit';

export const checklistStyles = css`
  :host {
    container-type: inline-size;
    /* In a dialog or a float, whose width follows what is in it: this one, or what there is room for. */
    contain-intrinsic-inline-size: 68rem;
  }

  .title {
    margin: 0 0 0.3em;
    line-height: 1.2;
  }

  .trip {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem 1.25rem;
    margin-block: 0.75rem;
    padding: 0.5rem 1rem;
    border-inline-start: 4px solid var(--_accent);
    background: var(--_raised);
  }

  .trip p {
    margin: 0;
  }

  @container (min-width: 48rem) {
    .columns {
      columns: 2;
      column-gap: 3rem;
    }
  }

  section {
    break-inside: avoid;
    padding-block-end: 1rem;
  }

  h3 {
    margin: 0;
    padding-block: 0.5rem 0.3rem;
    border-block-end: 2px solid var(--_accent);
    line-height: 1.2;
  }

  ul {
    list-style: none;
    margin: 0;
    padding: 0;
  }

  li {
    border-block-end: 1px solid var(--_line);
  }

  label {
    display: flex;
    align-items: center;
    gap: 0.85rem;
    min-height: var(--_target);
    padding-block: 0.5rem;
    cursor: pointer;
  }

  label > span {
    flex: 1;
  }

  input {
    flex: none;
    inline-size: 24px;
    block-size: 24px;
    margin: 0;
    accent-color: var(--_accent);
  }

  :checked + span {
    color: var(--_muted);
  }

  .tag {
    display: inline-block;
    margin-inline-start: 0.5em;
    padding-inline: 0.5em;
    border: 1px solid var(--_line);
    border-radius: 1em;
    font-size: 0.82em;
    color: var(--_muted);
    white-space: nowrap;
  }

  .tag.yours {
    border-color: var(--_accent);
    color: var(--_accent);
  }

  .why {
    margin: -0.25rem 0 0;
    padding: 0 0 0.6rem calc(24px + 0.85rem);
    font-size: 0.93em;
    color: var(--_muted);
  }

  .tally {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.25rem 1rem;
    padding-block: 0.5rem;
    border-block-start: 1px solid var(--_line);
  }

  progress {
    flex: 1 0 100%;
    appearance: none;
    inline-size: 100%;
    block-size: 5px;
    border: 0;
    background: var(--_line);
  }

  progress::-webkit-progress-bar {
    background: var(--_line);
  }

  progress::-webkit-progress-value {
    background: var(--_accent);
  }

  progress::-moz-progress-bar {
    background: var(--_accent);
  }

  .tally [role='status'] {
    flex: 1 1 10rem;
    margin: 0;
  }

  @media print {
    .trip,
    .tally {
      display: none;
    }
  }
`;
