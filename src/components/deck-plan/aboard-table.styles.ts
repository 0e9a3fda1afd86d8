import { type CSSResultGroup, css } from 'lit';
import { pieceStyles } from './piece.styles.ts';

export const aboardTableStyles: CSSResultGroup = [
  pieceStyles,
  css`
    :host {
      container-type: inline-size;
    }

    th {
      font-size: 0.9em;
    }

    td {
      padding: 6px 3px;
      vertical-align: top;
    }

    th {
      padding: 0 3px 4px;
    }

    tr.selected {
      background: color-mix(in srgb, var(--_accent) 12%, transparent);
    }

    .named {
      display: flex;
      gap: 6px;
      align-items: center;
    }

    .glyph {
      flex: none;
    }

    .name,
    .figure {
      display: inline-flex;
      align-items: center;
      min-height: var(--_target);
      font-variant-numeric: tabular-nums;
    }

    .holder .mass .hint {
      display: block;
    }

    .holder .figure {
      padding-inline: 10px 6px;
    }

    .holder .hint {
      margin: 0 0 0 10px;
    }

    .mass {
      width: 5.6em;
    }

    .place {
      width: 38%;
    }

    .helm {
      width: 1%;
    }

    .helm label {
      display: flex;
      gap: 6px;
      align-items: center;
      min-height: var(--_target);
      padding-inline: 4px;
      cursor: pointer;
      white-space: nowrap;
    }

    .out {
      width: 1%;
      padding-inline-end: 0;
    }

    .remove path {
      fill: none;
      stroke: currentColor;
      stroke-width: 2;
      stroke-linecap: round;
    }

    .spot {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(6em, 1fr));
      gap: 8px;
      margin-block-start: 8px;
    }

    .add {
      display: flex;
      flex-wrap: wrap;
      gap: 6px;
      margin-block-start: 12px;
    }

    .add button {
      flex: 1 1 auto;
      padding-inline: 10px;
    }

    @container (max-width: 569px) {
      thead {
        position: absolute;
        width: 1px;
        height: 1px;
        overflow: hidden;
        clip-path: inset(50%);
      }

      table,
      tbody {
        display: block;
      }

      tr {
        display: grid;
        grid-template-columns: minmax(5.2em, 1fr) minmax(0, 1.9fr) auto;
        gap: 6px;
        padding-block: 10px;
        border-block-end: 1px solid var(--_line);
      }

      td:is(.who, .mass, .place, .helm, .out) {
        width: auto;
        padding: 0;
        border: 0;
        min-width: 0;
      }

      .who {
        grid-column: 1 / 3;
        grid-row: 1;
      }

      .out {
        grid-column: 3;
        grid-row: 1;
        justify-self: end;
      }

      .mass {
        grid-column: 1;
        grid-row: 2;
      }

      .place {
        grid-column: 2;
        grid-row: 2;
      }

      .helm {
        grid-column: 3;
        grid-row: 2;
      }

      tr:not(:has(.helm label)) .place {
        grid-column: 2 / 4;
      }

      .helm:empty,
      .holder .helm,
      .holder .out {
        display: none;
      }
    }

    @container (max-width: 299px) {
      .place,
      tr:not(:has(.helm label)) .place {
        grid-column: 1 / 4;
        grid-row: 3;
      }

      .mass {
        grid-column: 1;
      }

      .helm {
        grid-column: 2 / 4;
      }

      .holder .mass {
        grid-column: 1 / 4;
      }
    }

    @media print {
      .add,
      .out {
        display: none !important;
      }

      .helm label:has(input:not(:checked)) {
        display: none;
      }

      input,
      select {
        border: 0 !important;
        appearance: none;
      }
    }
  `,
];
