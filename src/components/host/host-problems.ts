import { html, nothing, type ReactiveControllerHost } from 'lit';
import { hostWords as words } from '../words/en-host.ts';

/** What a page gave an element and what is wrong with it, with the way to mend it. */
export interface HostProblem {
  /** The attribute or property, as a page writes it. */
  readonly attribute: string;
  readonly message: string;
}
export type ProblemEvent = CustomEvent<HostProblem>;

/** Tells the author of a page what is wrong: on the element, by an event, and once in the console. */
export class HostProblems {
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #logged = new Set<string>();
  #now: readonly HostProblem[] = [];

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
  }

  /** What is wrong now with these attributes; what was wrong with them before is over. */
  tell(about: readonly string[], problems: readonly HostProblem[]): void {
    const others = this.#now.filter(({ attribute }) => !about.includes(attribute));
    this.#now = [...others, ...problems];
    for (const problem of problems) this.#log(problem);
    this.#host.requestUpdate();
  }

  #log(problem: HostProblem): void {
    const line = `<${this.#host.localName}> ${words.problem(problem.attribute, problem.message)}`;
    if (this.#logged.has(line)) return;
    this.#logged.add(line);
    console.error(line);
    const options = { detail: problem, bubbles: true, composed: true };
    this.#host.dispatchEvent(new CustomEvent('homeleg-problem', options) satisfies ProblemEvent);
  }

  render() {
    if (this.#now.length === 0) return nothing;
    return html`<div class="note" role="alert" part="problem">
      <strong>${words.title}</strong>
      <ul>
        ${this.#now.map(({ attribute, message }) => html`<li><code>${attribute}</code>: ${message}</li>`)}
      </ul>
    </div>`;
  }
}

declare global {
  interface HTMLElementEventMap {
    'homeleg-problem': ProblemEvent;
  }
}
