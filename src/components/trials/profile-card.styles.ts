import { css } from 'lit';

export const profileCardStyles = css`
  .why,
  .facts,
  .handed {
    margin: 0;
  }

  .facts {
    font-weight: 600;
  }

  .handed:empty {
    display: none;
  }

  a {
    color: var(--_accent);
  }

  @media print {
    .buttons,
    .handed,
    .why {
      display: none;
    }
  }
`;
