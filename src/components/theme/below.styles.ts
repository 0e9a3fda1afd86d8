import { css } from 'lit';

/**
 * Parts further down a long page: laid out and painted once they come near the window, or are searched, focused or
 * printed. Until then about their room is kept.
 */
export const belowStyles = css`
  .below {
    content-visibility: auto;
    contain-intrinsic-block-size: auto 24rem;
    /* Frames round what has the keyboard reach beyond it. */
    overflow-clip-margin: 8px;
  }

  @media print {
    .below {
      content-visibility: visible;
    }
  }
`;
