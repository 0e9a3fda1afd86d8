import { css } from 'lit';
import { define } from '../define.ts';
import { QuantityField } from '../field/quantity-field.ts';

/** A quantity field in a table: its label is read, not seen, for the column has a heading. */
export class MassField extends QuantityField {
  static override styles = [
    ...QuantityField.styles,
    css`
      label {
        position: absolute;
        width: 1px;
        height: 1px;
        overflow: hidden;
        clip-path: inset(50%);
        white-space: nowrap;
      }

      .figure input {
        padding-inline-end: 2.4em;
      }

      .unit {
        inset-inline-end: 8px;
      }

      @media print {
        .figure input {
          border: 0;
        }
      }
    `,
  ];
}

define('homeleg-mass-field', MassField);

declare global {
  interface HTMLElementTagNameMap {
    'homeleg-mass-field': MassField;
  }
}
