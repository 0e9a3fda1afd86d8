import { css } from 'lit';

export const plannerStyles = css`
  :host {
    container-type: inline-size;
    /* In a dialog or a float, whose width follows what is in it: this one, or what there is room for. */
    contain-intrinsic-inline-size: 68rem;
  }

  ::slotted([slot='logo']) {
    grid-column: 1 / -1;
    justify-self: start;
    max-inline-size: 100%;
  }

  .bench {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    grid-template-columns: minmax(0, 1fr);
  }

  .note {
    margin: 0;
    padding: 10px 14px;
    border-inline-start: 4px solid var(--_doubt);
    background: var(--_raised);
    border-radius: 0 var(--_radius) var(--_radius) 0;
  }

  .note + .note {
    margin-block-start: 8px;
  }

  .asks,
  .tells {
    display: grid;
    gap: calc(var(--_gap) * 1.5);
    align-content: start;
    min-width: 0;
  }

  .card {
    background: var(--_raised);
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    min-width: 0;
  }

  .card > summary {
    list-style: none;
    display: grid;
    grid-template-columns: auto minmax(0, 1fr) auto;
    gap: 2px 12px;
    align-items: center;
    min-height: 60px;
    padding: 10px 16px;
    cursor: pointer;
    border-radius: inherit;
  }

  .card > summary::-webkit-details-marker {
    display: none;
  }

  .card > summary::after {
    content: '';
    width: 10px;
    height: 10px;
    border-block-end: 2px solid var(--_muted);
    border-inline-end: 2px solid var(--_muted);
    transform: translateY(-3px) rotate(45deg);
    transition: transform 0.15s;
  }

  .card[open] > summary::after {
    transform: translateY(3px) rotate(-135deg);
  }

  .card h2 {
    margin: 0;
    font-size: 1.1em;
    line-height: 1.3;
  }

  .card .state {
    display: block;
    color: var(--_muted);
    font-size: 0.9em;
    font-weight: 400;
  }

  .card .state.open-question {
    color: var(--_doubt);
  }

  .step {
    width: 30px;
    height: 30px;
    display: grid;
    place-items: center;
    border-radius: 50%;
    border: 2px solid var(--_accent);
    color: var(--_accent);
    font-weight: 700;
    font-variant-numeric: tabular-nums;
  }

  .inside {
    padding: 4px 16px 16px;
    display: grid;
    gap: calc(var(--_gap) * 1.25);
    grid-template-columns: minmax(0, 1fr);
  }

  homeleg-route-map {
    min-height: 380px;
  }

  .tells > section {
    background: var(--_raised);
    border: 1px solid var(--_line);
    border-radius: calc(var(--_radius) * 1.4);
    padding: 16px;
    min-width: 0;
  }

  .tells > section.bare {
    padding: 0;
    border: 0;
    background: none;
  }

  .tells h2 {
    margin: 0 0 10px;
    font-size: 1.1em;
  }

  /* Room kept until the part has come. */
  [data-part] :not(:defined) {
    display: block;
    min-height: 120px;
  }

  homeleg-curve-plot:not(:defined) {
    min-height: 340px;
  }

  homeleg-measured-note {
    display: block;
    margin-block-start: 12px;
  }

  /* Figures still being worked out stay as readable as the rest. */
  .tells > section.unsettled {
    border-style: dashed;
  }

  .strip {
    position: sticky;
    inset-block-end: 0;
    z-index: 3;
    display: block;
    margin-inline: -4px;
    padding: 4px;
    padding-block-end: calc(4px + env(safe-area-inset-bottom));
    background: var(--_paper);
    border-block-start: 1px solid var(--_line);
    color: inherit;
    text-decoration: none;
  }

  @container (min-width: 960px) {
    .bench {
      grid-template-columns: minmax(0, 1.35fr) minmax(360px, 1fr);
      align-items: start;
    }

    .tools,
    .notes,
    .wide {
      grid-column: 1 / -1;
    }

    .strip {
      display: none;
    }

    .load {
      display: grid;
      grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
      gap: 12px 40px;
    }

    homeleg-route-map {
      min-height: 460px;
    }
  }

  @media print {
    .tools,
    .asks,
    .notes,
    .strip,
    #saved,
    /* The browser's own print menu does not wait for parts that nobody has seen yet; better none than empty ones. */
    .wide.card:has(.inside :not(:defined)) {
      display: none;
    }

    .bench {
      display: block;
    }

    .tells > section {
      border: 0;
      padding: 0 0 12px;
      break-inside: avoid;
    }

    /* What must be aboard on the way goes along on paper, whether or not it is open. */
    #further,
    #passage {
      border: 0;
    }

    #further > summary,
    #further:not(:has(homeleg-further:defined)),
    #passage > summary,
    #passage:not(:has(homeleg-passage-plan:defined)) {
      display: none;
    }

    #further > .inside,
    #passage > .inside {
      padding-inline: 0;
    }

    #further::details-content,
    #passage::details-content {
      content-visibility: visible;
      block-size: auto;
    }
  }
`;
