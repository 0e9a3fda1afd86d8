import { type CSSResultGroup, css } from 'lit';
import { deckDrawingStyles } from './deck-drawing.styles.ts';
import { pieceStyles } from './piece.styles.ts';

export const deckPlanStyles: CSSResultGroup = [
  pieceStyles,
  deckDrawingStyles,
  css`
    .plan {
      display: grid;
      gap: var(--_gap) calc(var(--_gap) * 2);
      grid-template-columns: minmax(0, 1fr);
    }

    .plan.wide {
      grid-template-columns: minmax(0, 0.44fr) minmax(0, 0.56fr);
      align-items: start;
    }

    .wide figure {
      position: sticky;
      inset-block-start: 8px;
    }

    .beside {
      container-type: inline-size;
      display: grid;
      gap: calc(var(--_gap) * 1.5);
      min-width: 0;
    }

    figure {
      margin: 0;
      min-width: 0;
    }

    .water {
      position: relative;
      border-radius: calc(var(--_radius) * 1.4);
      background: var(--_water);
      overflow: hidden;
      min-height: 340px;
      touch-action: manipulation;
      user-select: none;
      -webkit-user-select: none;
      -webkit-touch-callout: none;
    }

    .water.taken-up {
      cursor: crosshair;
    }

    .water.dragging {
      cursor: grabbing;
    }

    .panel {
      min-height: 104px;
      padding-block-start: 8px;
    }

    .panel p {
      margin: 0 0 8px;
    }

    .panel .said {
      font-weight: 600;
    }

    .panel .said:empty {
      margin: 0;
    }

    .panel :is(.refused, .taken) {
      color: var(--_stop);
    }

    .tools {
      display: flex;
      flex-wrap: wrap;
      gap: 6px;
    }

    .pad {
      display: flex;
      gap: 6px;
    }

    .tools button {
      padding-inline: 12px;
    }

    .tools svg path {
      fill: none;
      stroke: currentColor;
      stroke-width: 2;
      stroke-linecap: round;
      stroke-linejoin: round;
    }

    dl {
      margin: 0;
    }

    dl > div {
      display: grid;
      grid-template-columns: minmax(0, 1fr) auto;
      gap: 0 12px;
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

    @container (min-width: 480px) {
      dl > div {
        grid-template-columns: 9em minmax(0, 1fr) auto;
        align-items: baseline;
      }

      dd.note {
        grid-column: 2;
        grid-row: 1;
      }
    }

    .tone-good dd.value {
      color: var(--_go);
    }

    .tone-doubt dd.value {
      color: var(--_doubt);
    }

    .tone-over dd {
      color: var(--_stop);
    }

    h3 {
      margin: 0 0 4px;
      font-size: 1em;
    }

    .caution {
      margin: 8px 0;
      color: var(--_doubt);
      font-weight: 600;
    }

    @media (forced-colors: active) {
      .water {
        border: 1px solid CanvasText;
        background: Canvas;
      }
    }

    @media print {
      :host {
        color-scheme: only light;
      }

      .panel,
      .waiting button,
      .waiting .hint {
        display: none;
      }

      .plan.wide {
        grid-template-columns: minmax(0, 1fr);
      }

      .water {
        background: none;
      }

      svg.deck {
        max-width: 9cm;
      }
    }
  `,
];
