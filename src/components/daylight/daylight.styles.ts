import { css } from 'lit';

export const daylightStyles = css`
  h3,
  p {
    margin: 0;
  }

  h3 {
    margin-block: 22px 8px;
    font-size: 1em;
  }

  .line {
    display: flex;
    gap: 10px;
  }

  .level {
    flex: none;
    width: 20px;
    height: 20px;
    margin-block-start: 0.15em;
    color: var(--_muted);
  }

  .marginal .level {
    color: var(--_doubt);
  }

  .no-go .level {
    color: var(--_stop);
  }

  .told {
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }

  .rule {
    margin-block-start: 4px;
    color: var(--_muted);
    font-size: 0.9em;
  }

  @media print {
    :host {
      color-scheme: only light;
    }
  }
`;
