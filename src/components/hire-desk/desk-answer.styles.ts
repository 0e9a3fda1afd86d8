import { css } from 'lit';

export const deskAnswerStyles = css`
  :host {
    container-type: inline-size;
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

  .head {
    display: flex;
    gap: 16px;
    align-items: center;
    padding: 18px;
    border-block-start: 6px solid var(--_tone);
    border-radius: var(--_radius) var(--_radius) 0 0;
    background: color-mix(in srgb, var(--_tone) 10%, var(--_raised));
  }

  .head .mark {
    flex: none;
    width: 64px;
    height: 64px;
    color: var(--_tone);
  }

  h2 {
    margin: 0;
    color: var(--_tone);
    font-size: clamp(1.7em, 9cqi, 2.9em);
    line-height: 1.1;
    letter-spacing: -0.01em;
  }

  .none h2 {
    color: var(--_ink);
    font-size: 1.5em;
  }

  .head p {
    margin: 4px 0 0;
  }

  .boat {
    color: var(--_muted);
  }

  .body {
    display: grid;
    gap: 12px;
    padding: 16px 18px;
    border: 1px solid var(--_line);
    border-block-start: 0;
    border-radius: 0 0 var(--_radius) var(--_radius);
    background: var(--_raised);
  }

  .body p {
    margin: 0;
  }

  .back {
    font-size: 1.35em;
    font-weight: 700;
  }

  ul {
    display: grid;
    gap: 8px;
    margin: 0;
    padding: 0;
    list-style: none;
  }

  li {
    display: flex;
    gap: 10px;
    font-weight: 600;
  }

  li .level {
    flex: none;
    width: 20px;
    height: 20px;
    margin-block-start: 0.12em;
    color: var(--_tone);
  }

  .good {
    font-variant-numeric: tabular-nums;
  }

  .cautions {
    padding-block-start: 10px;
    border-block-start: 1px solid var(--_line);
    color: var(--_muted);
    font-size: 0.9em;
  }

  @media (forced-colors: active) {
    .head {
      border: 2px solid CanvasText;
    }
  }
`;
