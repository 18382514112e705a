/**
 * Turns a drawn SVG into a picture file: colours and fonts that come from the page are written into a copy,
 * which is then painted on a canvas. Nothing is sent anywhere.
 */

/** Pixels of the picture for each unit of the drawing. */
const SHARPNESS = 2;
const MARGIN = 16;

/** The drawing as text that stands by itself: every `var(--…)` replaced by what it means on this page. */
function standaloneSvg(svg: SVGSVGElement): string {
  const styles = getComputedStyle(svg);
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const [x = 0, y = 0, width = 0, height = 0] = (svg.getAttribute('viewBox') ?? '').split(' ').map(Number);
  copy.setAttribute('xmlns', 'http://www.w3.org/2000/svg');
  copy.setAttribute('viewBox', `${x - MARGIN} ${y - MARGIN} ${width + 2 * MARGIN} ${height + 2 * MARGIN}`);
  copy.setAttribute('width', String((width + 2 * MARGIN) * SHARPNESS));
  copy.setAttribute('height', String((height + 2 * MARGIN) * SHARPNESS));
  const text = new XMLSerializer().serializeToString(copy);
  return text.replace(/var\((--[\w-]+)\)/g, (_, name: string) =>
    // Font names come in quotes, which would end the attribute they are put into.
    styles.getPropertyValue(name).trim().replaceAll('"', "'"),
  );
}

/** Paints a drawing; rejects where the browser cannot. */
export async function paintPng(svg: SVGSVGElement): Promise<Blob> {
  const image = new Image();
  const address = URL.createObjectURL(new Blob([standaloneSvg(svg)], { type: 'image/svg+xml' }));
  try {
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth;
    canvas.height = image.naturalHeight;
    const pen = canvas.getContext('2d');
    if (pen === null) throw new Error('no canvas');
    pen.fillStyle = getComputedStyle(svg).getPropertyValue('--paper').trim() || 'white';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0);
    return await new Promise((resolve, reject) => {
      canvas.toBlob((blob) => (blob === null ? reject(new Error('no picture')) : resolve(blob)), 'image/png');
    });
  } finally {
    URL.revokeObjectURL(address);
  }
}
