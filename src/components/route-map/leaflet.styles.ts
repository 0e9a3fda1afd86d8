/*! From the style sheet of Leaflet 1.9.4, BSD-2-Clause, (c) 2010-2023 Volodymyr Agafonkin, (c) 2010-2011 CloudMade; trimmed to the parts in use. */
import { css } from 'lit';

/** Where Leaflet's panes, pictures, lines and markers lie. No image addresses: they would resolve against the page. */
export const leafletStyles = css`
  .leaflet-pane,
  .leaflet-tile,
  .leaflet-marker-icon,
  .leaflet-tile-container,
  .leaflet-pane > svg,
  .leaflet-layer {
    position: absolute;
    left: 0;
    top: 0;
  }

  .leaflet-container {
    overflow: hidden;
    -webkit-tap-highlight-color: transparent;
    outline-offset: 1px;
  }

  .leaflet-tile,
  .leaflet-marker-icon {
    user-select: none;
    -webkit-user-drag: none;
  }

  .leaflet-marker-icon {
    display: block;
    pointer-events: none;
  }

  .leaflet-overlay-pane svg,
  .leaflet-waters-pane svg {
    max-width: none;
    max-height: none;
    user-select: none;
  }

  .leaflet-tile {
    max-width: none;
    max-height: none;
    padding: 0;
    visibility: hidden;
    mix-blend-mode: plus-lighter;
  }

  .leaflet-tile-loaded {
    visibility: inherit;
  }

  .leaflet-pane {
    z-index: 400;
  }

  .leaflet-tile-pane {
    z-index: 200;
  }

  .leaflet-waters-pane {
    z-index: 300;
  }

  .leaflet-words-pane {
    z-index: 350;
  }

  .leaflet-marker-pane {
    z-index: 600;
  }

  .leaflet-map-pane svg {
    z-index: 200;
  }

  .leaflet-pane > svg path,
  .leaflet-tile-container {
    pointer-events: none;
  }

  .leaflet-zoom-animated {
    transform-origin: 0 0;
  }

  svg.leaflet-zoom-animated {
    will-change: transform;
  }

  .leaflet-zoom-anim .leaflet-zoom-animated {
    transition: transform 0.25s cubic-bezier(0, 0, 0.25, 1);
  }

  .leaflet-zoom-anim .leaflet-tile,
  .leaflet-pan-anim .leaflet-tile {
    transition: none;
  }

  .leaflet-zoom-anim .leaflet-zoom-hide {
    visibility: hidden;
  }
`;
