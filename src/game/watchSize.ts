/** Calls back when an element has another size; where the browser cannot tell, when the window has. */
export function watchSize(element: Element, onChange: () => void): () => void {
  try {
    const observer = new ResizeObserver(onChange);
    observer.observe(element);
    return () => observer.disconnect();
  } catch {
    window.addEventListener('resize', onChange);
    return () => window.removeEventListener('resize', onChange);
  }
}
