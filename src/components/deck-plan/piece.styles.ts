import { css } from 'lit';

/** Colours of people and things, the same on the boat and in the table. */
export const pieceStyles = css`
  .piece {
    --_body: light-dark(#c9b98c, #8d8259);
    --_body-edge: light-dark(#8c7d51, #c4b78a);
    --_on-body: light-dark(#2b2410, #17130a);
  }

  .piece.adult,
  .piece.child {
    --_body: light-dark(#0b6a66, #57bdb1);
    --_body-edge: light-dark(#074b48, #9fe3d9);
    --_on-body: var(--_ink);
  }

  .piece.child {
    --_body: light-dark(#64aea6, #2f8a82);
    --_body-edge: light-dark(#2b7a73, #7fd0c6);
  }

  .piece.dog {
    --_body: light-dark(#c08d5c, #b07e50);
    --_body-edge: light-dark(#84592f, #e0b487);
    --_on-body: light-dark(#2b1a08, #180e04);
  }

  .piece.tank,
  .piece.battery {
    --_body: light-dark(#dfe3df, #53686a);
    --_body-edge: light-dark(#52645f, #b6c8c5);
    --_on-body: var(--_ink);
  }

  .piece .body {
    fill: var(--_body);
    stroke: var(--_body-edge);
    stroke-width: 1.2;
  }

  .piece .tail,
  .piece .ear {
    fill: none;
    stroke: var(--_body-edge);
    stroke-width: 3.4;
    stroke-linecap: round;
  }

  .piece .head {
    fill: var(--_raised);
    stroke: var(--_body-edge);
    stroke-width: 1.5;
  }

  .piece .line,
  .piece .cap {
    fill: none;
    stroke: var(--_body-edge);
    stroke-width: 1.4;
    stroke-linecap: round;
  }

  .piece .mass {
    fill: var(--_on-body);
    font-weight: 600;
    text-anchor: middle;
    font-variant-numeric: tabular-nums;
  }

  .wheel circle {
    fill: var(--_raised);
    stroke: var(--_ink);
    stroke-width: 1.5;
  }

  .wheel path {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }

  .wheel .hub {
    fill: var(--_ink);
  }

  @media (forced-colors: active) {
    .piece .body,
    .piece .head,
    .wheel circle {
      fill: Canvas;
      stroke: CanvasText;
    }

    .piece .line,
    .piece .tail,
    .piece .ear,
    .piece .cap,
    .wheel path {
      stroke: CanvasText;
    }

    .piece .mass,
    .wheel .hub {
      fill: CanvasText;
    }
  }
`;
