import { css } from 'lit';

/** Layout of the page that draws waters: cards, rows of buttons, lists that stay usable at 280 px. */
export const watersEditorStyles = css`
  :host {
    container-type: inline-size;
  }

  .bench {
    display: grid;
    gap: 16px;
    grid-template-columns: minmax(0, 1fr);
    align-items: start;
  }

  @container (min-width: 62rem) {
    .bench.two {
      grid-template-columns: minmax(0, 3fr) minmax(0, 2fr);
    }

    .bench.two > .whole {
      grid-column: 1 / -1;
    }
  }

  .card {
    display: grid;
    gap: var(--_gap);
    min-width: 0;
    padding: 14px;
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    background: var(--_raised);
  }

  .card > * {
    min-width: 0;
  }

  h2,
  h3,
  p {
    margin: 0;
  }

  h2 {
    font-size: 1.15em;
  }

  .row {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
  }

  .row > input,
  .row > select {
    flex: 1 1 10em;
    inline-size: auto;
  }

  .file {
    position: relative;
    display: inline-grid;
    place-items: center;
    min-block-size: var(--_target);
    padding: 6px 16px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
    cursor: pointer;
  }

  .file:hover {
    border-color: var(--_accent);
  }

  .file input {
    position: absolute;
    inset: 0;
    opacity: 0;
    cursor: pointer;
  }

  .file:focus-within {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }

  .list {
    display: grid;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .list li {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 12px;
    align-items: center;
    justify-content: space-between;
    padding-block: 6px;
    border-block-end: 1px solid var(--_line);
  }

  .list .what {
    flex: 1 1 12em;
    min-inline-size: 0;
  }

  .list li[aria-current='true'] {
    border-inline-start: 5px solid var(--_accent);
    padding-inline-start: 10px;
  }

  .long {
    max-block-size: 32rem;
    overflow-y: auto;
  }

  .row + .muted {
    margin-block-start: 0.75rem;
  }
  .muted {
    color: var(--_muted);
  }

  .warn,
  .refused {
    padding: 10px 12px;
    border-inline-start: 5px solid var(--_doubt);
    background: color-mix(in srgb, var(--_doubt) 10%, var(--_raised));
  }

  .refused {
    border-inline-start-color: var(--_stop);
    background: color-mix(in srgb, var(--_stop) 10%, var(--_raised));
  }

  .good {
    padding: 10px 12px;
    border-inline-start: 5px solid var(--_go);
  }

  code {
    overflow-wrap: anywhere;
  }

  td.grow {
    inline-size: 100%;
  }

  td.buttons {
    white-space: nowrap;
  }

  td,
  th {
    padding: 3px 4px;
    vertical-align: middle;
  }

  td .problem {
    white-space: normal;
  }

  .scroll {
    overflow-x: auto;
    border-radius: var(--_radius);
  }

  .hours input {
    min-inline-size: 4.5em;
  }

  .box {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 7.5em), 1fr));
    gap: var(--_gap);
  }

  textarea {
    resize: vertical;
  }

  .points > :not(summary) {
    margin: 8px;
  }

  .adding {
    display: grid;
    gap: 4px;
    margin-block-start: 8px;
  }
`;
