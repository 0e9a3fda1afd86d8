import { css } from 'lit';

export const furtherStyles = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 10px;
  }

  summary h3 {
    display: inline;
    margin: 0;
    font-size: 1em;
  }

  .inside {
    padding-block: 6px 4px;
  }

  @container (max-width: 560px) {
    details > .inside {
      margin-inline: 8px;
    }
  }

  .cautions {
    margin: 4px 0 0;
    color: var(--_muted);
    font-size: 0.9em;
  }

  @media print {
    details {
      border: 0;
    }

    details:not(.minimums),
    .cautions {
      display: none;
    }

    .minimums::details-content {
      content-visibility: visible;
      block-size: auto;
    }

    .minimums > summary {
      list-style: none;
      padding-inline: 0;
    }

    .minimums > .inside {
      margin-inline: 0;
    }
  }
`;
