import { css } from 'lit';

export const trialsStyles = css`
  :host {
    container-type: inline-size;
  }

  .bench {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .tools {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: end;
  }

  .tools label {
    flex: 1 1 9rem;
    max-width: 14rem;
    color: var(--_muted);
    font-size: 0.875em;
  }

  .tools select {
    color: var(--_ink);
  }

  .note {
    display: flex;
    flex-wrap: wrap;
    gap: 0 8px;
    align-items: center;
    margin: 0;
    padding: 6px 14px;
    min-height: var(--_target);
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_raised);
    border-radius: 0 var(--_radius) var(--_radius) 0;
  }

  .card,
  .found {
    background: var(--_raised);
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    min-width: 0;
  }

  .found {
    padding: 16px;
  }

  .found h2 {
    margin: 0 0 10px;
    font-size: 1.1em;
  }

  .card > summary {
    list-style: none;
    display: grid;
    grid-template-columns: auto minmax(0, 1fr) auto;
    gap: 2px 12px;
    align-items: center;
    min-height: 60px;
    padding: 10px 16px;
    cursor: pointer;
    border-radius: inherit;
  }

  .card > summary::-webkit-details-marker {
    display: none;
  }

  .card > summary::after {
    content: '';
    width: 10px;
    height: 10px;
    border-block-end: 2px solid var(--_muted);
    border-inline-end: 2px solid var(--_muted);
    transform: translateY(-3px) rotate(45deg);
    transition: transform 0.15s;
  }

  .card[open] > summary::after {
    transform: translateY(3px) rotate(-135deg);
  }

  .card h2 {
    margin: 0;
    font-size: 1.1em;
    line-height: 1.3;
  }

  .card .state {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
    font-weight: 400;
  }

  .step {
    width: 30px;
    height: 30px;
    display: grid;
    place-items: center;
    border-radius: 50%;
    border: 2px solid var(--_accent);
    color: var(--_accent);
    font-weight: 700;
    font-variant-numeric: tabular-nums;
  }

  .inside {
    padding: 4px 0 16px;
    margin-inline: 16px;
    display: grid;
    gap: calc(var(--_gap) * 1.25);
    grid-template-columns: minmax(0, 1fr);
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  hr {
    width: 100%;
    margin: 4px 0;
    border: 0;
    border-block-start: 1px solid var(--_line);
  }

  .why {
    margin: 0;
    color: var(--_muted);
    max-width: 46em;
  }

  .form {
    padding: 16px;
    border: 2px solid var(--_accent);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  .inside :not(:defined) {
    display: block;
    min-height: 80px;
  }

  @container (max-width: 480px) {
    .inside {
      margin-inline: 10px;
    }

    .found,
    .form {
      padding: 12px 10px;
    }
  }

  @media print {
    .tools,
    .note,
    .buttons,
    .card > summary,
    .bench:not(.sheet) > .card,
    .sheet > :not(#sheet) {
      display: none;
    }

    .card {
      border: 0;
    }

    .inside {
      margin: 0;
      padding: 0;
    }

    .found {
      border: 0;
      padding: 0 0 12px;
    }
  }
`;
