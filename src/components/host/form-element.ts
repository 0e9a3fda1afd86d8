import { property } from 'lit/decorators.js';
import { SpeakingElement } from '../language/speaking-element.ts';
import { written } from './written.ts';

/**
 * An element that takes part in a form of the page: its trip is sent under its `name` as JSON, and the form is not
 * valid while there is no plan.
 */
export abstract class FormElement extends SpeakingElement {
  static readonly formAssociated = true;

  /** Under which name a form sends the trip, as JSON. */
  @property({ converter: written(''), reflect: true }) name = '';

  readonly #internals = this.attachInternals();
  #sent: unknown;

  constructor() {
    super();
    // The browser cannot point at something inside; the element shows what is missing itself.
    this.addEventListener('invalid', (event) => {
      event.preventDefault();
      this.showMissing();
    });
  }

  /** Takes the reader to what is missing. */
  protected abstract showMissing(): void;

  /** The browser tells that the form was reset. */
  abstract formResetCallback(): void;

  /** The form it belongs to. */
  get form(): HTMLFormElement | null {
    return this.#internals.form;
  }

  /** Whether the form may be sent, as for any field. */
  get validity(): ValidityState {
    return this.#internals.validity;
  }

  /** Why the form may not be sent; empty where it may. */
  get validationMessage(): string {
    return this.#internals.validationMessage;
  }

  /** Whether a form asks it at all. */
  get willValidate(): boolean {
    return this.#internals.willValidate;
  }

  /** Asks whether the form may be sent. */
  checkValidity(): boolean {
    return this.#internals.checkValidity();
  }

  /** The same, and takes the reader to what is missing. */
  reportValidity(): boolean {
    return this.#internals.reportValidity();
  }

  /** The browser tells that it came into a form or left one. */
  formAssociatedCallback(): void {
    this.#sent = undefined;
    this.requestUpdate();
  }

  /** What the form sends, and why it may not yet be sent; in step with the screen. */
  protected tellForm(trip: object | undefined, missing: string): void {
    if (missing !== this.#internals.validationMessage) {
      this.#internals.setValidity(missing === '' ? {} : { customError: true }, missing);
    }
    // A drag makes a trip per frame; outside of a form nobody reads them.
    if (!this.form || trip === this.#sent) return;
    this.#sent = trip;
    this.#internals.setFormValue(trip ? JSON.stringify(trip) : null);
  }
}
