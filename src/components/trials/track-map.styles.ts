import { css } from 'lit';

export const trackMapStyles = css`
  #frame {
    cursor: grab;
  }

  path.track {
    fill: none;
    stroke: var(--_muted);
  }

  path.stretch {
    fill: none;
    stroke: var(--_accent);
    stroke-linecap: round;
  }

  path.stretch.alone {
    stroke: var(--_muted);
  }
`;
