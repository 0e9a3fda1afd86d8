import { css } from 'lit';

export const fuelBarStyles = css`
  :host {
    --_out: var(--homeleg-out, light-dark(#0b6a66, #57bdb1));
    --_home: var(--homeleg-home, light-dark(#64aea6, #2b706b));
    --_on-out: light-dark(#ffffff, #06211f);
    --_on-home: light-dark(#06211f, #eaf6f3);
    --_spare: light-dark(#d5e9e4, #1d4240);
    --_sand: light-dark(#c9b98c, #8d8259);
    --_rest: light-dark(#98a59f, #4d6664);
    min-width: 0;
  }

  figure {
    margin: 0;
  }

  /* Kept before the width is known, so that nothing jumps. */
  .bar {
    min-height: 9.4em;
  }

  .empty {
    display: grid;
    place-items: center;
    min-height: 5.4em;
    padding: 8px 32px;
    border: 1.5px dashed var(--_edge);
    border-radius: 2.7em;
    color: var(--_muted);
    text-align: center;
  }

  svg {
    display: block;
    width: 100%;
    overflow: visible;
    print-color-adjust: exact;
  }

  text {
    fill: var(--_ink);
    text-anchor: middle;
    font-variant-numeric: tabular-nums;
  }

  .glass {
    fill: var(--_raised);
    stroke: var(--_edge);
    stroke-width: 1.5;
  }

  path.out {
    fill: var(--_out);
  }

  path.home {
    fill: var(--_home);
  }

  path.manoeuvring {
    fill: var(--_sand);
  }

  path.spare,
  path.reserve {
    fill: var(--_spare);
  }

  path.unusable {
    fill: var(--_rest);
  }

  path.unfilled {
    fill: var(--_raised);
  }

  .key path.unfilled {
    stroke: var(--_edge);
  }

  path.touched {
    fill: var(--_stop);
    opacity: 0.85;
  }

  path.short {
    fill: color-mix(in srgb, var(--_stop) 12%, var(--_raised));
    stroke: var(--_stop);
    stroke-width: 1.5;
  }

  .hatch {
    fill: none;
    stroke: var(--_out);
    stroke-width: 2;
    opacity: 0.6;
  }

  .hatch.pale {
    stroke: var(--_raised);
    opacity: 0.45;
  }

  .hatch.spill {
    stroke: var(--_stop);
    opacity: 1;
  }

  .number {
    font-weight: 600;
  }

  .number.on-out {
    fill: var(--_on-out);
  }

  .number.on-home {
    fill: var(--_on-home);
  }

  .number.on-touched {
    fill: var(--_raised);
    stroke: var(--_stop);
    stroke-width: 4;
    stroke-linejoin: round;
    paint-order: stroke;
  }

  .plate {
    fill: var(--_raised);
  }

  .tick {
    stroke: var(--_edge);
  }

  .scale {
    fill: var(--_muted);
  }

  .trip,
  .band,
  .level {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2;
  }

  .left-trip {
    stroke: var(--_edge);
    stroke-dasharray: 1 5;
    stroke-linecap: round;
  }

  .short-trip {
    stroke: var(--_stop);
    stroke-dasharray: 5 4;
  }

  .halo {
    stroke: var(--_raised);
    stroke-width: 6;
    opacity: 0.8;
  }

  .sign {
    fill: var(--_ink);
    stroke: var(--_paper);
    stroke-width: 2;
    paint-order: stroke;
  }

  text.left,
  text.short {
    font-weight: 700;
  }

  text.short {
    fill: var(--_stop);
  }

  .tear {
    fill: var(--_paper);
  }

  .edge {
    fill: none;
    stroke: var(--_edge);
    stroke-width: 1.5;
  }

  dl {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(min(15em, 100%), 1fr));
    gap: 2px 24px;
    margin: 10px 0;
  }

  dl > div {
    display: flex;
    gap: 8px;
    justify-content: space-between;
    padding-block: 4px;
    border-block-end: 1px solid var(--_line);
  }

  dt {
    display: flex;
    gap: 8px;
    align-items: baseline;
  }

  dt svg {
    flex: none;
    align-self: start;
    width: 26px;
    margin-block-start: 0.2em;
  }

  dd {
    margin: 0;
    text-align: end;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  dd .hint {
    display: block;
    margin: 0;
    font-weight: 400;
  }

  .line-of-short dd,
  .line-of-touched dd {
    color: var(--_stop);
  }

  .scroll {
    max-height: 24em;
    overflow: auto;
  }

  /* Told apart by outline, hatch and number alone. */
  @media (forced-colors: active) {
    :host {
      --_ink: CanvasText;
      --_muted: CanvasText;
      --_paper: Canvas;
      --_raised: Canvas;
      --_stop: CanvasText;
      --_spare: Canvas;
      --_out: CanvasText;
      --_on-out: Canvas;
      --_home: Canvas;
      --_on-home: CanvasText;
      --_sand: GrayText;
      --_rest: GrayText;
    }

    path.home,
    path.spare {
      stroke: CanvasText;
    }

    path.touched {
      opacity: 1;
    }

    .hatch.pale {
      opacity: 1;
    }
  }

  @media print {
    :host {
      color-scheme: only light;
    }

    .bar {
      min-height: 0;
    }

    .bar svg {
      height: auto;
    }

    details {
      display: none;
    }
  }
`;
