import { css } from 'lit';

export const answerStyles = css`
  :host {
    container-type: inline-size;
  }

  p,
  h2,
  h3,
  ul {
    margin: 0;
  }

  .go {
    --_tone: var(--_go);
  }

  .marginal {
    --_tone: var(--_doubt);
  }

  .no-go {
    --_tone: var(--_stop);
  }

  .none,
  .note {
    --_tone: var(--_muted);
  }

  .mark,
  .level {
    flex: none;
    color: var(--_tone);
  }

  .head {
    display: flex;
    gap: 14px;
    align-items: flex-start;
    min-height: 6.5em;
    padding: 16px;
    border-block-start: 5px solid var(--_tone);
    border-radius: var(--_radius) var(--_radius) 0 0;
    background: color-mix(in srgb, var(--_tone) 9%, var(--_raised));
  }

  .head .mark {
    width: 56px;
    height: 56px;
  }

  .head > div {
    min-width: 0;
  }

  .trip {
    color: var(--_muted);
    font-size: 0.9em;
  }

  h2 {
    color: var(--_tone);
    font-size: clamp(1.5em, 7cqi, 2.25em);
    font-weight: 700;
    letter-spacing: -0.01em;
    line-height: 1.15;
  }

  .none h2 {
    color: var(--_ink);
  }

  .left {
    margin-block-start: 6px;
    font-size: 1.1em;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .none .left {
    font-weight: 400;
  }

  .missing {
    margin-block-start: 6px;
    padding-inline-start: 1.1em;
  }

  .body {
    display: grid;
    gap: 14px;
    padding: 14px 16px 16px;
    border: 1px solid var(--_line);
    border-block-start: 0;
    border-radius: 0 0 var(--_radius) var(--_radius);
    background: var(--_raised);
  }

  .facts {
    display: grid;
    gap: 4px;
    padding: 0;
    list-style: none;
    font-variant-numeric: tabular-nums;
  }

  h3 {
    margin-block-end: 8px;
    font-size: 1em;
  }

  .reasons {
    display: grid;
    gap: 12px;
    padding: 0;
    list-style: none;
  }

  .reasons li {
    display: flex;
    gap: 10px;
  }

  .reasons li > div {
    min-width: 0;
  }

  .level {
    width: 20px;
    height: 20px;
    margin-block-start: 0.15em;
  }

  .fixes {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-block-start: 8px;
  }

  .fixes button {
    font-size: 0.95em;
    line-height: 1.25;
    text-align: start;
  }

  details {
    margin-block-start: 12px;
  }

  .cautions {
    padding-block-start: 12px;
    border-block-start: 1px solid var(--_line);
    color: var(--_muted);
    font-size: 0.9em;
  }

  .strip {
    display: flex;
    flex-wrap: wrap;
    gap: 0 10px;
    align-items: center;
    min-height: var(--_target);
    padding: 4px 12px;
    border-inline-start: 6px solid var(--_tone);
    background: color-mix(in srgb, var(--_tone) 9%, var(--_raised));
  }

  .strip .mark {
    width: 28px;
    height: 28px;
  }

  .strip strong {
    flex: 1;
    min-width: min-content;
    overflow-wrap: normal;
  }

  .short {
    margin-inline-start: auto;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
    white-space: nowrap;
  }

  @container (min-width: 640px) {
    .head {
      gap: 20px;
      padding: 22px 24px;
    }

    .head .mark {
      width: 84px;
      height: 84px;
    }

    .body {
      gap: 18px;
      padding: 18px 24px 22px;
    }

    .left {
      font-size: 1.2em;
    }
  }

  @media (forced-colors: active) {
    .head,
    .strip {
      border: 2px solid CanvasText;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .mark,
    .head {
      print-color-adjust: exact;
    }

    .fixes {
      display: none;
    }

    section {
      break-inside: avoid;
    }

    details::details-content {
      content-visibility: visible;
      block-size: auto;
    }
  }
`;
