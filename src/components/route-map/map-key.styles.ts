import { css } from 'lit';

/** Samples in the key, drawn as what they stand for is on the map. */
export const mapKeyStyles = css`
  .sample {
    inline-size: 30px;
    block-size: 16px;
    flex: none;
    border-radius: 3px;
  }

  .sample.out {
    background: linear-gradient(var(--_accent), var(--_accent)) center / 100% 5px no-repeat;
  }

  .sample.home {
    background:
      repeating-linear-gradient(90deg, var(--_raised) 0 7px, transparent 7px 14px) center / 100% 2px no-repeat,
      linear-gradient(var(--_accent), var(--_accent)) center / 100% 5px no-repeat;
  }

  .sample:is(.reach-home, .reach-one-way) {
    block-size: 12px;
    border-block-start: 3px solid var(--_ink);
    border-radius: 0;
  }

  .sample.reach-home {
    background: color-mix(in srgb, var(--_ink) 10%, transparent);
  }

  .sample.reach-one-way {
    border-block-start-style: dashed;
  }

  .sample.slowed {
    background:
      linear-gradient(var(--_accent), var(--_accent)) center / 100% 5px no-repeat,
      repeating-linear-gradient(90deg, var(--_doubt) 0 2px, transparent 2px 9px);
  }

  .sample.set-route {
    block-size: 0;
    border-block-start: 2px dashed var(--_ink);
    border-radius: 0;
  }

  .sample.land {
    background: var(--_land);
    border: 1px solid color-mix(in srgb, var(--_land) 60%, var(--_ink));
  }

  .sample.shoal {
    background:
      radial-gradient(var(--_muted) 1px, transparent 1.4px) 0 0 / 8px 8px,
      color-mix(in srgb, var(--_land) 45%, var(--_water));
    border: 1px solid var(--_muted);
  }

  .sample.speed-limit {
    border: 1.5px dashed var(--_doubt);
  }

  .sample.keep-out {
    background: repeating-linear-gradient(45deg, transparent 0 4px, var(--_stop) 4px 5.2px);
    border: 1.5px solid var(--_stop);
  }

  .sample.landing {
    inline-size: 10px;
    block-size: 10px;
    margin-inline: 10px;
    border: 2px solid var(--_ink);
    border-radius: 0;
    rotate: 45deg;
  }

  @media (forced-colors: active) {
    .sample {
      forced-color-adjust: none;
    }
  }
`;
