import { css } from 'lit';

/**
 * Colours and spaces of every element. A page overrides any of them by the name behind `--homeleg-`;
 * inside, the names start with `--_`. Light or dark follows the inherited `color-scheme`.
 */
export const tokens = css`
  :host {
    --_paper: var(--homeleg-paper, light-dark(#f7f4ec, #10201f));
    --_raised: var(--homeleg-raised, light-dark(#fffdf7, #182b2a));
    --_ink: var(--homeleg-ink, light-dark(#15302f, #e9efe9));
    --_muted: var(--homeleg-muted, light-dark(#4c6361, #a3b7b3));
    --_line: var(--homeleg-line, light-dark(#d8d2c2, #33494a));
    /* Borders of controls need 3:1 against the paper; plain rules do not. */
    --_edge: var(--homeleg-edge, light-dark(#7c8a82, #6f8784));
    --_accent: var(--homeleg-accent, light-dark(#0b6a66, #6fd0c4));
    --_on-accent: var(--homeleg-on-accent, light-dark(#ffffff, #06211f));
    --_go: var(--homeleg-go, light-dark(#2b6b2f, #8fd08a));
    --_doubt: var(--homeleg-doubt, light-dark(#8a5a00, #f0b84d));
    --_stop: var(--homeleg-stop, light-dark(#a3341f, #ff9a82));
    --_water: var(--homeleg-water, light-dark(#dcebe8, #16302f));
    --_land: var(--homeleg-land, light-dark(#e9dfc6, #3a3a2a));
    --_radius: var(--homeleg-radius, 10px);
    --_gap: var(--homeleg-gap, 12px);
    --_target: 44px;
    display: block;
    box-sizing: border-box;
    color: var(--_ink);
    font: inherit;
    font-family: var(--homeleg-font, inherit);
    line-height: 1.45;
    overflow-wrap: break-word;
    /* Every language of the words runs so; in a page that runs the other way a position or a range would be read backwards. */
    direction: ltr;
  }

  /* Words of the page go on in its own direction. */
  :host(:dir(rtl)) ::slotted(*) {
    direction: rtl;
  }

  :host([theme='light']) {
    color-scheme: light;
  }

  :host([theme='dark']) {
    color-scheme: dark;
    background: var(--_paper);
  }

  :host([hidden]),
  [hidden] {
    display: none !important;
  }

  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  :focus-visible {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }

  @media (forced-colors: active) {
    :host {
      --_edge: CanvasText;
      --_line: CanvasText;
      --_accent: Highlight;
      --_on-accent: HighlightText;
    }
  }

  @media (prefers-reduced-motion: reduce) {
    *,
    *::before,
    *::after {
      animation: none !important;
      transition: none !important;
    }
  }
`;
