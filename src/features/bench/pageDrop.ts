/**
 * Files dropped anywhere on the page. Beside a place that takes them a browser would open the file in the place of the
 * page, so the whole page takes them.
 */
import { useEffect, useRef, useState } from 'preact/hooks';

/** Text that is dragged from one field to another is none of ours. */
function hasFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes('Files') ?? false;
}

/** Hands over the first file of every drop; answers whether one hangs over the page. */
export function usePageDrop(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  const take = useRef(onFile);
  take.current = onFile;
  useEffect(() => {
    const ends = new AbortController();
    const { signal } = ends;
    addEventListener(
      'dragover',
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(true);
      },
      { signal },
    );
    addEventListener('dragleave', (event) => event.relatedTarget === null && setOver(false), { signal });
    addEventListener(
      'drop',
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) take.current(file);
      },
      { signal },
    );
    return () => ends.abort();
  }, []);
  return over;
}
