import { css } from 'lit';

export const howSureStyles = css`
  .chances {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(15em, 100%), 1fr));
    gap: var(--_gap);
  }

  .chances > div {
    padding: 10px 14px;
    border: 1px solid var(--_line);
    border-radius: var(--_radius);
    background: var(--_paper);
  }

  dt {
    color: var(--_muted);
  }

  dd {
    font-size: 1.15em;
    font-weight: 600;
  }

  h4 {
    margin-block-end: 6px;
    font-size: 1em;
  }

  .shares {
    display: grid;
    gap: 8px;
    max-width: 36em;
    padding: 0;
    list-style: none;
  }

  .shares li {
    display: grid;
    grid-template-columns: minmax(0, 1fr) auto;
    gap: 2px 12px;
  }

  .share {
    font-variant-numeric: tabular-nums;
  }

  .bar {
    display: block;
    grid-column: 1 / -1;
    block-size: 10px;
    border: 1px solid var(--_edge);
    border-radius: 5px;
    overflow: hidden;
  }

  dd .bar {
    margin-block: 4px;
  }

  .bar > span {
    display: block;
    block-size: 100%;
    background: var(--_accent);
    forced-color-adjust: none;
    print-color-adjust: exact;
  }

  .check .hint {
    margin-block-end: 8px;
  }

  .check [role='status']:not(:empty) {
    margin-block-start: 8px;
  }

  .run {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 14px;
    align-items: center;
    font-variant-numeric: tabular-nums;
  }

  progress {
    flex: 1 1 10em;
    max-width: 20em;
    block-size: 14px;
    accent-color: var(--_accent);
  }
`;
