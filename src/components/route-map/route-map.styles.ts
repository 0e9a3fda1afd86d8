import { css } from 'lit';

/** The look of the map: the frame and what stands round it, and the handles on it. */
export const routeMapStyles = css`
  :host {
    container-type: inline-size;
  }

  .tools,
  .arrows,
  .selection {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 6px;
  }

  .tools {
    margin-block-end: 8px;
  }

  .tools button,
  .selection button {
    padding-inline: 12px;
  }

  .picture {
    position: relative;
    /* Leaflet stacks up to 1000; that stays in here. */
    isolation: isolate;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    overflow: hidden;
    background: var(--_paper);
  }

  #frame {
    block-size: var(--homeleg-map-height, clamp(340px, 78cqi, 560px));
    /* One finger scrolls the page, two move the map. */
    touch-action: pan-x pan-y;
    cursor: crosshair;
    border-radius: inherit;
  }

  #frame[data-panning] {
    cursor: grabbing;
  }

  #frame:focus-visible {
    outline-offset: -3px;
  }

  .picture[data-failed] #frame {
    visibility: hidden;
    block-size: 160px;
  }

  .wait {
    position: absolute;
    inset: 0;
    display: grid;
    place-items: center;
    margin: 0;
    padding: 16px;
    text-align: center;
    color: var(--_muted);
    pointer-events: none;
  }

  .cross,
  .keys {
    display: none;
    position: absolute;
    z-index: 1001;
    pointer-events: none;
  }

  .cross {
    inset: calc(50% - 22px) auto auto calc(50% - 22px);
    inline-size: 44px;
    block-size: 44px;
    stroke: var(--_ink);
    stroke-width: 2;
  }

  #frame:focus-visible ~ .cross,
  #frame:focus-visible ~ #map-keys,
  #frame:has(.waypoint :focus-visible) ~ #waypoint-keys {
    display: block;
  }

  .keys {
    inset: auto 8px 30px 8px;
    margin: 0 auto;
    inline-size: fit-content;
    padding: 6px 12px;
    border-radius: var(--_radius);
    background: var(--_raised);
    border: 1px solid var(--_edge);
    font-size: 0.9em;
  }

  .zoom {
    position: absolute;
    z-index: 1001;
    inset-block-start: 8px;
    inset-inline-end: 8px;
    display: grid;
    gap: 6px;
  }

  .street-map {
    position: absolute;
    z-index: 1001;
    inset-block-start: 8px;
    inset-inline-start: 8px;
    padding-inline: 12px;
  }

  .zoom button {
    font-size: 1.4em;
    line-height: 1;
  }

  .foot {
    position: absolute;
    z-index: 1001;
    inset: auto 8px 4px 8px;
    display: flex;
    justify-content: space-between;
    align-items: end;
    gap: 8px;
    pointer-events: none;
    font-size: 12px;
  }

  .foot p {
    margin: 0;
    padding: 0 4px;
    background: color-mix(in srgb, var(--_raised) 85%, transparent);
    border-radius: 4px;
  }

  .foot .attribution {
    margin-inline-start: auto;
    pointer-events: auto;
  }

  .attribution a {
    color: inherit;
    display: inline-block;
    padding-block: 4px;
  }

  .scale svg {
    display: block;
    stroke: var(--_ink);
    fill: none;
  }

  .note {
    margin: 0;
    color: var(--_doubt);
    font-weight: 600;
  }

  .note:not(:empty) {
    margin-block-start: 6px;
  }

  .keep {
    display: flex;
    align-items: start;
    gap: 10px;
    min-block-size: 44px;
    margin-block-start: 8px;
  }

  .keep input {
    flex: none;
    inline-size: 22px;
    block-size: 22px;
    margin: 0;
    accent-color: var(--_ink);
  }

  .keep .why {
    display: block;
    color: var(--_muted);
    font-size: 0.875em;
  }

  .below {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 8px 16px;
    margin-block-start: 8px;
  }

  .arrows > span {
    min-inline-size: 9.5em;
  }

  .below .hint {
    margin: 0;
    flex: 1 1 14em;
  }

  .selection {
    flex: 1 1 20em;
  }

  .fingers {
    display: none;
  }

  @media (pointer: coarse) {
    .fingers {
      display: inline;
    }
  }

  @container (max-width: 21rem) {
    .tools,
    .selection {
      gap: 4px;
    }

    .tools button,
    .selection button {
      padding-inline: 6px;
    }

    .arrows > span {
      flex: 1 0 100%;
    }
  }

  .key {
    margin-block-start: 8px;
  }

  .key ul {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 18px;
    margin-block: 0;
    padding: 0;
    list-style: none;
  }

  .key li {
    display: flex;
    align-items: center;
    gap: 8px;
  }
`;
