import { css } from 'lit';

export const streamPlacesStyles = css`
  p,
  ul {
    margin: 0;
  }

  .plain {
    padding-inline-start: 1.2em;
  }

  .own {
    display: grid;
    gap: 8px;
  }

  .own:empty {
    display: none;
  }

  .inside {
    display: grid;
    gap: var(--_gap);
    padding-block: 6px 12px;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  .hours {
    table-layout: fixed;
  }

  .hours th,
  .hours td {
    padding: 2px 4px 2px 0;
    border: 0;
  }

  .hours thead th {
    font-size: 0.9em;
    vertical-align: bottom;
  }

  .hours tbody th {
    width: 28%;
    color: var(--_ink);
    font-weight: 500;
    vertical-align: middle;
  }

  .hours input {
    padding-inline: 8px;
    font-variant-numeric: tabular-nums;
  }

  .state {
    padding: 8px 12px;
    border-inline-start: 4px solid var(--_go);
    background: var(--_paper);
  }

  .state.open {
    border-color: var(--_doubt);
  }

  .mark {
    color: var(--_doubt);
    font-weight: 600;
  }
`;
