/** The next turn of the page: what is due before it, such as an answer to a touch, goes first. */
export function turn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}

/** Once the next picture is on the screen. */
export function afterPicture(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => void turn().then(resolve));
  });
}
