import { css } from 'lit';

export const fromHereStyles = css`
  .big {
    width: 100%;
    min-height: 56px;
    font-size: 1.1em;
  }

  .field > label {
    margin-block-end: 4px;
    font-weight: 500;
  }

  .row {
    display: flex;
    gap: 8px;
  }

  .row input {
    flex: 1;
    min-height: 52px;
  }

  .row button {
    flex: none;
    min-height: 52px;
  }

  select {
    min-height: 52px;
  }

  .check {
    display: flex;
    gap: 12px;
    align-items: center;
    min-height: 52px;
    cursor: pointer;
  }

  .check input {
    width: 26px;
    height: 26px;
  }

  section h4 {
    margin-block-end: 8px;
    font-size: 1.1em;
  }

  .used {
    margin-block-end: 8px;
  }

  .early {
    display: flex;
    gap: 8px;
    margin-block-end: 10px;
    font-weight: 600;
  }

  .ways {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(17em, 100%), 1fr));
    gap: 10px;
    margin-block-end: 8px;
    padding: 0;
    list-style: none;
  }

  .ways li {
    display: flex;
    gap: 12px;
    padding: 12px 14px;
    border: 1px solid var(--_line);
    border-block-start: 5px solid var(--_tone);
    border-radius: var(--_radius);
    background: color-mix(in srgb, var(--_tone) 7%, var(--_raised));
  }

  .ways .mark {
    flex: none;
    width: 40px;
    height: 40px;
    color: var(--_tone);
  }

  .ways li > div {
    min-width: 0;
  }

  .ways h4 {
    margin: 0;
    font-size: 1em;
  }

  .told {
    color: var(--_tone);
    font-weight: 600;
  }

  .margin {
    font-size: 1.15em;
    font-weight: 700;
    font-variant-numeric: tabular-nums;
  }

  @container (min-width: 640px) {
    .stack > .big {
      max-width: 24em;
    }
  }
`;
