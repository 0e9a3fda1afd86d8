import { css } from 'lit';

export const tripDetailsStyles = css`
  :host {
    container-type: inline-size;
  }

  dl,
  dd,
  ul,
  h3,
  p {
    margin: 0;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 8em;
    padding: 16px;
    border: 1.5px dashed var(--_edge);
    border-radius: var(--_radius);
    color: var(--_muted);
    text-align: center;
  }

  .keys {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(16em, 100%), 1fr));
    gap: var(--_gap);
  }

  .key {
    padding: 12px 14px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_raised);
  }

  .key dt {
    color: var(--_muted);
  }

  .key dd:not(.figure) {
    margin-block-start: 4px;
    font-size: 0.95em;
  }

  .key .figure {
    font-size: 1.45em;
    font-weight: 700;
    font-variant-numeric: tabular-nums;
    line-height: 1.3;
  }

  .stop .figure {
    color: var(--_stop);
  }

  .waiting,
  .waiting .figure {
    color: var(--_muted);
    font-weight: 400;
  }

  h3 {
    margin-block: 22px 8px;
    font-size: 1em;
  }

  ul {
    display: grid;
    gap: 6px;
    padding-inline-start: 1.1em;
  }

  .figures > div {
    display: flex;
    gap: 12px;
    justify-content: space-between;
    padding-block: 5px;
    border-block-end: 1px solid var(--_line);
  }

  .figures dd {
    font-variant-numeric: tabular-nums;
    text-align: end;
  }

  .assumptions {
    gap: 0;
    padding: 0;
    list-style: none;
  }

  .assumptions li {
    display: flex;
    gap: 12px;
    align-items: center;
    justify-content: space-between;
    border-block-end: 1px solid var(--_line);
  }

  .assumptions span {
    padding-block: 8px;
  }

  .assumptions button {
    flex: none;
  }

  @container (min-width: 760px) {
    .columns {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 36px;
    }
  }

  @media screen {
    .on-paper {
      display: none;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .assumptions button {
      display: none;
    }

    .key,
    section {
      break-inside: avoid;
    }
  }
`;
