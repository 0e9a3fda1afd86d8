import { css } from 'lit';

export const hireDeskStyles = css`
  .all {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .state {
    display: grid;
    gap: 8px;
  }

  .state p {
    margin: 0;
  }

  nav {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    padding-block-end: 10px;
    border-block-end: 2px solid var(--_line);
  }

  nav button[aria-current] {
    border-color: var(--_accent);
    background: var(--_accent);
    color: var(--_on-accent);
    font-weight: 600;
  }

  .view {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .alarm {
    display: flex;
    flex-wrap: wrap;
    gap: 10px 16px;
    align-items: center;
    padding: 14px 16px;
    border: 3px solid var(--_stop);
    border-radius: var(--_radius);
    background: color-mix(in srgb, var(--_stop) 14%, var(--_raised));
    color: var(--_ink);
    font-size: 1.15em;
  }

  .alarm > div:not(.row) {
    flex: 1 1 14em;
  }

  .alarm p {
    margin: 0;
  }

  .alarm .level {
    flex: none;
    width: 30px;
    height: 30px;
    color: var(--_stop);
  }

  @media (forced-colors: active) {
    nav button[aria-current] {
      forced-color-adjust: none;
    }
  }

  @media print {
    .all {
      display: block;
    }

    .off-paper {
      display: none;
    }

    .view {
      display: block;
    }
  }
`;
