import { css } from 'lit';

export const profileCardStyles = css`
  .why,
  .facts,
  .handed {
    margin: 0;
  }

  .why {
    color: var(--_muted);
    max-width: 46em;
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

  .buttons {
    position: relative;
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }

  input[type='file'] {
    position: absolute;
    width: 1px;
    height: 1px;
    min-height: 0;
    opacity: 0;
    pointer-events: none;
  }

  @media print {
    .buttons,
    .handed,
    .why {
      display: none;
    }
  }
`;
