import { css } from 'lit';

/** Cards where there is little room, two lines per waypoint where there is some, a table where it fits. */
export const waypointTableStyles = css`
  :host {
    container-type: inline-size;
  }

  .tools,
  .pages {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px;
    margin-block-start: var(--_gap);
  }

  .tools button,
  .pages button {
    padding-inline: 12px;
  }

  homeleg-add-waypoint {
    margin-block-start: var(--_gap);
  }

  table,
  tbody,
  tr {
    display: block;
  }

  thead {
    display: none;
  }

  table {
    margin-block-start: var(--_gap);
  }

  tr {
    gap: 8px;
    padding: 8px 10px;
    margin-block-end: 8px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  /* A closed row says where and how far; its fields come with "Change". */
  tr.closed {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 12px;
  }

  tr.open {
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    grid-template-areas:
      'number opener'
      'leg leg'
      'name name'
      'place place'
      'before before'
      'stop speed'
      'acts acts';
  }

  th,
  td {
    display: block;
    min-width: 0;
    padding: 0;
    border: 0;
  }

  td.empty,
  .closed td:not(.leg, .opener),
  .open .where {
    display: none;
  }

  .number {
    grid-area: number;
    align-self: center;
    display: flex;
    flex: 1 1 10em;
    align-items: center;
    gap: 8px;
    color: var(--_ink);
  }

  .where {
    font-weight: 400;
    font-variant-numeric: tabular-nums;
  }

  td.opener {
    grid-area: opener;
    justify-self: end;
    margin-inline-start: auto;
  }

  .count {
    display: inline-grid;
    place-items: center;
    min-inline-size: 28px;
    block-size: 28px;
    padding-inline: 5px;
    border: 2px solid var(--_accent);
    border-radius: 14px;
    font-variant-numeric: tabular-nums;
  }

  td.name {
    grid-area: name;
  }

  td.place {
    grid-area: place;
  }

  .open td.before:not(.empty) {
    grid-area: before;
    display: grid;
    grid-template-columns: repeat(2, minmax(0, 1fr));
    align-items: end;
    gap: 8px;
  }

  td.stop {
    grid-area: stop;
  }

  .fill-up {
    display: flex;
    align-items: center;
    gap: 8px;
    min-block-size: 44px;
    font-size: 0.875rem;
  }

  .fill-up input {
    inline-size: 20px;
    block-size: 20px;
    margin: 0;
    accent-color: var(--_accent);
  }

  td.stop.empty + td.speed {
    grid-column: 1 / -1;
  }

  td.speed {
    grid-area: speed;
  }

  .speed .field + .field {
    margin-block-start: 6px;
  }

  td.leg {
    grid-area: leg;
    flex: 1 1 13em;
  }

  td.leg.empty {
    display: none;
  }

  .open td.acts {
    grid-area: acts;
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }

  td.acts button {
    flex: 1 1 auto;
    padding-inline: 7px;
    white-space: nowrap;
  }

  .field .label {
    font-size: 0.9em;
    color: var(--_muted);
    font-weight: 400;
  }

  .leg .label {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
  }

  .leg p {
    margin: 0;
    font-variant-numeric: tabular-nums;
  }

  .field:is(.name, .place) {
    display: grid;
    grid-template-columns: 4em minmax(0, 1fr);
    align-items: center;
  }

  .field:is(.name, .place) .problem {
    grid-column: 2;
  }

  @container (max-width: 21rem) {
    .field:is(.name, .place) {
      display: block;
    }
  }

  @container (min-width: 32rem) {
    .closed td.opener {
      order: 1;
    }

    tr.open {
      grid-template-columns: repeat(4, minmax(0, 1fr));
      grid-template-areas:
        'number leg leg opener'
        'name name place place'
        'before before stop speed'
        'acts acts acts acts';
    }

    .open td.leg {
      align-self: center;
    }

    td.stop.empty + td.speed {
      grid-column: auto;
      grid-area: speed;
    }

    .field:is(.name, .place) {
      display: block;
    }

    td.acts button {
      flex: 0 1 auto;
      min-inline-size: 5em;
    }
  }

  @container (min-width: 48rem) {
    tr.open {
      grid-template-columns: repeat(9, minmax(0, 1fr)) 10.5em;
      grid-template-areas:
        'number number number leg leg leg leg leg leg opener'
        'name name name place place place place place place acts'
        'before before before before stop stop speed speed speed acts';
    }

    .open td.acts {
      margin-block-start: 1.35em;
      align-self: start;
    }
  }

  @container (min-width: 72rem) {
    table {
      display: table;
    }

    thead {
      display: table-header-group;
    }

    tbody {
      display: table-row-group;
    }

    tr:is(.open, .closed, thead *) {
      display: table-row;
    }

    tr :is(th, td):is(th, td, .empty, .before, .acts, .leg):not(.opener, .opener.opener) {
      display: table-cell;
      padding: 6px;
      border-block-end: 1px solid var(--_line);
      vertical-align: top;
    }

    tr :is(td.opener, .where) {
      display: none;
    }

    td .label {
      position: absolute;
      width: 1px;
      height: 1px;
      overflow: hidden;
      clip-path: inset(50%);
    }

    td.before {
      min-inline-size: 13.2em;
    }

    td.before .field {
      display: inline-block;
      vertical-align: top;
      inline-size: 5em;
    }

    td.before .field.distance {
      inline-size: 6.8em;
    }

    td.name {
      inline-size: 20%;
    }

    td.place {
      min-inline-size: 16em;
    }

    td.stop {
      min-inline-size: 6.5em;
    }

    td.speed {
      min-inline-size: 9.5em;
    }

    td.leg {
      min-inline-size: 9em;
    }

    td.acts {
      min-inline-size: 10.5em;
    }

    td.acts button {
      margin-block-end: 4px;
      min-inline-size: 4.6em;
    }

    .number {
      white-space: nowrap;
    }
  }
`;
