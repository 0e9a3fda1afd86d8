import { html, type LitElement, type ReactiveController } from 'lit';
import { plannerWords as words } from '../words/en-planner.ts';
import type { PartLoader } from './part-loader.ts';
import type { CardState } from './states.ts';

export type Question = 'boat' | 'aboard' | 'route' | 'day' | 'kept';
export type WideCard = 'legs' | 'load' | 'passage' | 'saved' | 'further';
export type Card = Question | WideCard;

/** Below this width the route comes first and the rest opens one by one, px. */
const PHONE = 700;

/** The cards of the planner: which are open, and how they are drawn. */
export class Cards implements ReactiveController {
  readonly #host: LitElement;
  readonly #parts: PartLoader;
  #open: ReadonlySet<Card> = new Set<Card>(['boat', 'aboard', 'route', 'day', 'kept', 'legs', 'load']);

  constructor(host: LitElement, parts: PartLoader) {
    this.#host = host;
    this.#parts = parts;
    host.addController(this);
  }

  hostConnected(): void {
    const host = this.#host;
    if (!host.hasUpdated && host.getBoundingClientRect().width < PHONE) this.#open = new Set<Card>(['route']);
  }

  shows(card: Card): boolean {
    return this.#open.has(card);
  }

  toggled(card: Card, open: boolean): void {
    if (open === this.#open.has(card)) return;
    const cards = new Set(this.#open);
    if (open) cards.add(card);
    else cards.delete(card);
    this.#open = cards;
    this.#host.requestUpdate();
    // What somebody opened is wanted, even where the page moved it out of sight meanwhile.
    if (open) void this.#parts.load(card);
  }

  /** Opens a card without taking the reader there. */
  open(card: Card): void {
    this.#open = new Set([...this.#open, card]);
    this.#host.requestUpdate();
  }

  /** Opens a card and takes the reader there. */
  async show(card: Card): Promise<void> {
    this.toggled(card, true);
    await this.#host.updateComplete;
    const place = this.#host.renderRoot.querySelector<HTMLElement>(`#${card}`);
    place?.scrollIntoView({ block: 'start' });
    place?.querySelector('summary')?.focus();
  }

  /** A numbered card that asks for something. */
  question(card: Question, step: number, { text, asks }: CardState, inside: unknown) {
    return html`<details
      class="card"
      part="card"
      id=${card}
      data-part=${card}
      ?open=${this.shows(card)}
      @toggle=${(event: Event) => this.toggled(card, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        <span class="step" aria-hidden="true">${step}</span>
        <h2>${words[card]} <span class="state ${asks ? 'open-question' : ''}">${text}</span></h2>
      </summary>
      <div class="inside">${inside}</div>
    </details>`;
  }

  /** A card below the questions, over the whole width. */
  wide(card: WideCard, title: string, state: string, inside: unknown) {
    return html`<details
      class="wide card"
      part="card"
      id=${card}
      data-part=${card}
      ?open=${this.shows(card)}
      @toggle=${(event: Event) => this.toggled(card, (event.currentTarget as HTMLDetailsElement).open)}
    >
      <summary>
        <span></span>
        <h2>${title} <span class="state">${state}</span></h2>
      </summary>
      <div class="inside">${inside}</div>
    </details>`;
  }
}
