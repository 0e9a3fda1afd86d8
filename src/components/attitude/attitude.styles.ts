import { css } from 'lit';

export const attitudeStyles = css`
  .views {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 12px;
  }

  .views.three {
    grid-template-columns: repeat(3, minmax(0, 1fr));
  }

  figure {
    margin: 0;
    min-width: 0;
  }

  figcaption {
    padding-block-start: 4px;
    font-size: 0.92em;
  }

  figcaption b {
    display: block;
    font-weight: 600;
  }

  .side {
    display: block;
    max-width: 100%;
    height: auto;
    border-radius: var(--_radius);
    background: color-mix(in srgb, var(--_water) 30%, var(--_raised));
  }

  .below {
    fill: var(--_water);
  }

  .over {
    fill: var(--_water);
    opacity: 0.55;
  }

  .surface {
    stroke: var(--_accent);
    stroke-width: 1.5;
  }

  .hull {
    fill: var(--_raised);
    stroke: var(--_ink);
    stroke-width: 1.5;
    stroke-linejoin: round;
  }

  .seam {
    fill: none;
    stroke: var(--_edge);
  }

  .engine,
  .leg {
    fill: var(--_muted);
    stroke: var(--_ink);
    stroke-linejoin: round;
  }

  .person {
    fill: color-mix(in srgb, var(--_ink) 72%, var(--_raised));
  }

  .person.helm {
    fill: var(--_accent);
  }

  .thing {
    fill: var(--_land);
    stroke: var(--_edge);
  }

  dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(18em, 100%), 1fr));
    gap: 0 24px;
    margin: 0 0 14px;
  }

  dl > div {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 0 10px;
    align-content: start;
    padding-block: 5px;
    border-block-end: 1px solid var(--_line);
  }

  dt {
    color: var(--_muted);
  }

  dd {
    margin: 0;
    text-align: end;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  dd.note {
    grid-column: 1 / -1;
    font-size: 0.9em;
    font-weight: 400;
    color: var(--_muted);
  }

  .tone-doubt .value {
    color: var(--_doubt);
  }

  .tone-over .value {
    color: var(--_stop);
  }

  details {
    margin-block-start: 12px;
  }

  details dl {
    grid-template-columns: minmax(0, 1fr);
    margin-block-end: 8px;
  }

  details dl > div {
    grid-template-columns: minmax(0, 0.9fr) minmax(0, 1.1fr);
  }

  @media (forced-colors: active) {
    .below,
    .over {
      fill: Canvas;
    }

    .person,
    .engine,
    .leg {
      fill: CanvasText;
    }
  }
`;
