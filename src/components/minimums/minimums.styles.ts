import { css } from 'lit';

export const minimumsStyles = css`
  .told {
    display: block;
    font-size: 0.9em;
    font-weight: 400;
  }

  .told.twice {
    display: none;
  }

  .short {
    display: flex;
    gap: 6px;
    align-items: center;
    color: var(--_tone);
    font-size: 0.9em;
  }

  thead th.figure {
    max-width: 10em;
    white-space: normal;
  }

  @media screen {
    .some .late {
      display: none;
    }
  }

  @container (max-width: 640px) {
    .told,
    .told.twice {
      display: block;
      font-size: 1em;
    }

    .cards td.turn {
      display: none;
    }

    .cards tr {
      grid-template-columns: repeat(2, minmax(0, 1fr));
    }
  }

  @media print {
    .told {
      display: none;
    }

    th,
    td {
      padding: 3px 6px;
    }
  }
`;
