import { css } from 'lit';

export const helmFormStyles = css`
  :host {
    display: contents;
  }

  dialog {
    width: 100vw;
    max-width: 100vw;
    height: 100dvh;
    max-height: 100dvh;
    margin: 0;
    padding: 0;
    border: 0;
    background: var(--_paper);
    color: var(--_ink);
  }

  .helm {
    display: flex;
    flex-direction: column;
    gap: 10px;
    max-width: 30rem;
    min-height: 100%;
    margin-inline: auto;
    padding: 8px 12px calc(12px + env(safe-area-inset-bottom));
  }

  header {
    display: flex;
    justify-content: space-between;
    align-items: center;
  }

  header p,
  h2,
  .with {
    margin: 0;
  }

  header p,
  .with {
    color: var(--_muted);
  }

  h2 {
    font-size: 2rem;
    line-height: 1.15;
  }

  .do {
    flex: 1;
    display: grid;
    align-items: center;
    font-size: 2.4rem;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(4.6rem, 1fr));
    gap: 6px;
  }

  .fields button {
    padding: 4px;
    line-height: 1.25;
    overflow: hidden;
  }

  .fields span,
  .fields b {
    display: block;
  }

  .fields span {
    font-size: 0.85em;
    font-weight: 400;
  }

  .digits {
    display: block;
    padding: 2px 12px;
    border: 2px solid var(--_accent);
    border-radius: var(--_radius);
    background: var(--_raised);
    font-size: 3.6rem;
    font-weight: 700;
    line-height: 1.2;
    text-align: end;
    font-variant-numeric: tabular-nums;
  }

  small {
    font-size: 1.2rem;
    font-weight: 400;
  }

  .keys {
    flex: 1;
    display: grid;
    grid-template-columns: repeat(3, 1fr);
    grid-auto-rows: minmax(52px, 1fr);
    gap: 8px;
    max-height: 24rem;
  }

  .keys button {
    font-size: 1.8rem;
    font-weight: 600;
  }

  .turn {
    display: grid;
    grid-template-columns: 1fr 2fr;
    gap: 8px;
    margin-block-start: auto;
  }

  .turn button {
    min-height: 72px;
    font-size: 1.4rem;
    font-weight: 700;
  }

  @media (max-height: 560px) {
    .digits {
      font-size: 2.2rem;
    }

    .turn button {
      min-height: 52px;
    }
  }

  /* A phone held across: the keys stand beside what they fill in. */
  @media (max-height: 560px) and (min-width: 560px) {
    .helm {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      grid-template-rows: auto auto auto auto 1fr;
      gap: 8px 16px;
      max-width: 60rem;
    }

    .helm > * {
      grid-column: 1;
    }

    .helm > .do {
      grid-column: 1 / -1;
    }

    .helm > .keys {
      grid-column: 2;
      grid-row: 1 / span 5;
      grid-auto-rows: minmax(44px, 1fr);
      max-height: none;
    }

    .helm > .turn {
      align-self: end;
    }

    h2 {
      font-size: 1.5rem;
    }
  }

  @media print {
    dialog {
      display: none;
    }
  }
`;
