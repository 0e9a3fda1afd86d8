import { css } from 'lit';

export const fleetCardStyles = css`
  .file {
    position: relative;
    display: inline-flex;
    align-items: center;
    min-height: var(--_target);
    padding: 6px 16px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    cursor: pointer;
  }

  .file:focus-within {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }

  .file input {
    position: absolute;
    inset: 0;
    opacity: 0;
    cursor: pointer;
  }

  .about {
    gap: var(--_gap);
  }

  .about button {
    justify-self: start;
  }

  .list {
    display: grid;
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  .line {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 16px;
    align-items: center;
    justify-content: space-between;
    padding-block: 6px;
    border-block-end: 1px solid var(--_line);
  }

  .refused ul {
    margin: 6px 0 0;
    padding-inline-start: 1.2em;
    font-weight: 400;
  }
`;
