import { css } from 'lit';

export const trackImportStyles = css`
  :host {
    display: grid;
    gap: calc(var(--_gap) * 1.25);
    grid-template-columns: minmax(0, 1fr);
  }

  .progress {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: center;
  }

  progress {
    width: min(16em, 100%);
    accent-color: var(--_accent);
    vertical-align: middle;
  }

  .messages {
    margin: 0;
    padding: 10px 14px 10px 30px;
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_paper);
  }

  .said {
    margin: 8px 0 0;
    font-weight: 600;
  }

  section {
    display: grid;
    gap: var(--_gap);
    grid-template-columns: minmax(0, 1fr);
  }

  .groups {
    display: grid;
    gap: var(--_gap);
    grid-template-columns: repeat(auto-fill, minmax(min(100%, 340px), 1fr));
    align-items: start;
  }

  .group {
    padding: 14px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  homeleg-track-map:not(:defined) {
    display: block;
    min-height: 340px;
  }
`;
