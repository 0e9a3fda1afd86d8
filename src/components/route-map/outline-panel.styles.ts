import { css } from 'lit';

/** The table beside the outline; samples are drawn as the lines on the map are. */
export const outlineStyles = css`
  :host {
    margin-block-start: 8px;
    padding: 10px 12px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  .choice {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 8px;
  }

  .choice label {
    font-weight: 600;
  }

  .choice select {
    inline-size: auto;
    max-inline-size: 100%;
  }

  .hint {
    margin: 8px 0;
  }

  .nothing {
    margin: 8px 0;
    color: var(--_stop);
    font-weight: 600;
  }

  table {
    inline-size: 100%;
    border-collapse: collapse;
    font-variant-numeric: tabular-nums;
  }

  th,
  td {
    padding: 4px 10px 4px 0;
    border-block-end: 1px solid var(--_line);
    text-align: start;
    vertical-align: bottom;
  }

  tbody td {
    white-space: nowrap;
  }

  tbody td:last-child {
    white-space: normal;
    hyphens: auto;
  }

  tbody th {
    font-weight: 400;
  }

  :is(th, td):last-child {
    padding-inline-end: 0;
  }

  tbody tr:last-child > * {
    border-block-end: 0;
  }

  .sample {
    display: block;
    inline-size: 30px;
    block-size: 12px;
    margin-block-end: 2px;
    border-block-start: 3px solid var(--_ink);
  }

  .sample.out-and-home {
    background: color-mix(in srgb, var(--_ink) 10%, transparent);
  }

  .sample.one-way {
    border-block-start-style: dashed;
  }

  @media (forced-colors: active) {
    .sample {
      forced-color-adjust: none;
      border-color: CanvasText;
    }
  }
`;
