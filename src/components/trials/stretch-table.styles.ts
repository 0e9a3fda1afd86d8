import { css } from 'lit';

export const stretchTableStyles = css`
  td input {
    width: 7.5em !important;
    font-variant-numeric: tabular-nums;
  }

  td select {
    width: auto !important;
    min-width: 7em;
  }

  @container (max-width: 900px) {
    tr {
      grid-template-columns: repeat(auto-fill, minmax(min(100%, 7em), 1fr));
    }

    td input,
    td select {
      width: 100% !important;
      min-width: 0;
    }
  }

  p {
    margin: 0;
  }
`;
