import { css } from 'lit';

export const choiceStyles = css`
  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 6px;
  }

  .choice {
    position: relative;
    flex: 1 1 auto;
    margin: 0;
    font-weight: 400;
    cursor: pointer;
  }

  .choice input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }

  .choice span {
    display: grid;
    place-items: center;
    min-height: var(--_target);
    padding: 6px 8px;
    border: 1px solid var(--_edge);
    border-radius: var(--_radius);
    background: var(--_raised);
    text-align: center;
  }

  .choice:hover span {
    border-color: var(--_accent);
  }

  .choice input:checked + span {
    border-color: var(--_accent);
    box-shadow: inset 0 0 0 2px var(--_accent);
    font-weight: 600;
  }

  .choice input:focus-visible + span {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }

  @media (forced-colors: active) {
    .choice input:checked + span {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
  }
`;
