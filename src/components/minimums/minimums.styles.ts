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

  td .sub {
    white-space: normal;
  }

  td.figure {
    min-width: 7em;
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
      grid-template-columns: repeat(3, minmax(0, 1fr));
    }

    td.figure {
      min-width: 0;
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
