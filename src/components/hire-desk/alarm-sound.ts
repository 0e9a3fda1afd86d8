/** Rings while it is on. A browser lets a page be heard only after a press, so it is switched on by one. */
export class AlarmSound {
  #context: AudioContext | undefined;

  get on(): boolean {
    return this.#context !== undefined;
  }

  /** To be called from a press; rings once, so that the desk knows how it sounds. False where there is no sound. */
  start(): boolean {
    try {
      this.#context ??= new AudioContext();
      void this.#context.resume();
      this.ring();
      return true;
    } catch {
      return false;
    }
  }

  stop(): void {
    void this.#context?.close();
    this.#context = undefined;
  }

  /** Three short tones. */
  ring(): void {
    const context = this.#context;
    if (!context) return;
    for (let i = 0; i < 3; i++) {
      const tone = context.createOscillator();
      const gain = context.createGain();
      tone.frequency.value = 880;
      gain.gain.value = 0.2;
      tone.connect(gain).connect(context.destination);
      const at = context.currentTime + i * 0.4;
      tone.start(at);
      tone.stop(at + 0.22);
    }
  }
}
