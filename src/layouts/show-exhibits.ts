const DEFINE = import.meta.glob('../components/*/define.ts');

/** Starts each element of the gallery once it comes near, and sets what its page would set by a script. */
export function showExhibits(root: ParentNode): void {
  const near = new IntersectionObserver(
    (seen) => {
      for (const { isIntersecting, target } of seen) {
        if (!isIntersecting) continue;
        near.unobserve(target);
        void start(target as HTMLElement);
      }
    },
    { rootMargin: '200px' },
  );
  for (const frame of root.querySelectorAll('[data-exhibit]')) near.observe(frame);
}

async function start(frame: HTMLElement): Promise<void> {
  const { src, title = '' } = frame.dataset;
  if (src) {
    const show = () => frame.replaceChildren(pageIn(src, title));
    // Pages of others are not kept on the device: until then it stays said that they need a network.
    if (navigator.onLine) show();
    else addEventListener('online', show, { once: true });
    return;
  }
  const { tag = '', attributes = '[]', styles = '[]' } = frame.dataset;
  await DEFINE[`../components/${tag.replace('homeleg-', '')}/define.ts`]?.();
  const element = document.createElement(tag);
  // What a reader keeps on this site is not for the gallery.
  element.setAttribute('keep', 'none');
  for (const [name, value] of JSON.parse(attributes) as [string, string][]) element.setAttribute(name, value);
  for (const [name, value] of JSON.parse(styles) as [string, string][]) element.style.setProperty(name, value);
  frame.replaceChildren(element);
}

/** As the gallery gives it to copy. */
function pageIn(src: string, title: string): HTMLIFrameElement {
  const frame = document.createElement('iframe');
  Object.assign(frame, { title, src, loading: 'lazy' });
  return frame;
}
