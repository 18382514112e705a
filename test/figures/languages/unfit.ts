/**
 * Finds text that does not fit, on any page and in any state of a ride: what leaves the box that clips or frames it, what
 * leaves the window where nothing scrolls, and texts that lie over one another. Runs within the page.
 */
import type { Page } from 'playwright-core';

/** Installed before the page's own scripts; asked through `unfitOn`. */
export function installUnfit(): void {
  interface Seen {
    readonly holder: Element;
    readonly text: string;
    readonly boxes: readonly DOMRect[];
    readonly layer: Element | null;
  }
  /** Boxes in which a text has to stay although they do not clip it. */
  const FRAMES = 'button, .button, summary, .hud-card, .pad, .paper';
  /** These lie over the page and hide what is below. */
  const LAYERS = 'dialog[open], .ride-ready, .first-steps, .trouble';
  const TOUCHING_PX = 1.5;
  /** What a list of choices takes for its arrow, as Chromium draws it. */
  const LIST_ARROW_PX = 16;
  const laidOut = new CSSStyleSheet();
  laidOut.replaceSync('* { content-visibility: visible !important }');

  const isForTheEar = (from: Element): boolean => {
    for (let box: Element | null = from; box !== null; box = box.parentElement) {
      const { clipPath, position } = getComputedStyle(box);
      if (clipPath === 'inset(50%)' && position === 'absolute') return true;
    }
    return false;
  };
  /** Letters do not fill their line: what touches above and below is not over one another. */
  const inked = ({ left, top, width, height }: DOMRect): DOMRect =>
    new DOMRect(left, top + height * 0.2, width, height * 0.6);

  const seenTexts = (): readonly Seen[] => {
    const found: Seen[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const holder = node.parentElement;
      const text = (node.nodeValue ?? '').trim();
      if (holder === null || text === '' || holder.closest('script, style, option, title, desc') !== null)
        continue;
      if (!holder.checkVisibility({ visibilityProperty: true, opacityProperty: true }) || isForTheEar(holder))
        continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const boxes = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
      if (boxes.length > 0)
        found.push({ holder, text, boxes: boxes.map(inked), layer: holder.closest(LAYERS) });
    }
    return found;
  };

  const nameOf = (one: Element): string =>
    `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''}`.replace(/\.$/, '');

  const leaves = ({ holder, boxes }: Seen): string | null => {
    for (let box: Element | null = holder; box !== null && box !== document.body; box = box.parentElement) {
      const { overflowX, overflowY, position } = getComputedStyle(box);
      const scrolls = [overflowX, overflowY].some((one) => one === 'auto' || one === 'scroll');
      const isFrame = box.matches(FRAMES);
      if (scrolls && !isFrame) return null;
      const clips = overflowX === 'hidden' || overflowX === 'clip' || box.tagName === 'svg';
      if (!clips && !isFrame) {
        if (position === 'fixed') return null;
        continue;
      }
      const edge = box.getBoundingClientRect();
      const out = boxes.some(
        (one) =>
          one.left < edge.left - TOUCHING_PX ||
          one.right > edge.right + TOUCHING_PX ||
          // What scrolls up and down inside a frame comes into it again.
          (!scrolls && (one.top < edge.top - TOUCHING_PX || one.bottom > edge.bottom + TOUCHING_PX)),
      );
      if (out) return `leaves ${nameOf(box)}`;
      if (scrolls) return null;
    }
    return null;
  };

  /** What stays where it is while the page scrolls under it is compared only with its like. */
  const anchorOf = (from: Element): Element | null => {
    for (let box: Element | null = from; box !== null; box = box.parentElement) {
      const { position, overflowX, overflowY } = getComputedStyle(box);
      if (position === 'fixed' || position === 'sticky') return box;
      if ([overflowX, overflowY].some((one) => one === 'auto' || one === 'scroll')) return box;
    }
    return null;
  };

  /** What is chosen in a list, and what stands in a field of one line, is no text of the document. */
  const cutInFields = (): readonly string[] => {
    const pen = document.createElement('canvas').getContext('2d');
    return [...document.querySelectorAll<HTMLSelectElement | HTMLInputElement>('select, input')].flatMap(
      (field) => {
        if (pen === null || !field.checkVisibility()) return [];
        const { font, letterSpacing, paddingLeft, paddingRight } = getComputedStyle(field);
        const isList = field instanceof HTMLSelectElement;
        const text = isList ? (field.selectedOptions[0]?.text ?? '') : field.placeholder;
        pen.font = font;
        pen.letterSpacing = letterSpacing;
        const room = field.clientWidth - parseFloat(paddingLeft) - parseFloat(paddingRight);
        const over = pen.measureText(text).width - (room - (isList ? LIST_ARROW_PX : 0));
        return over > TOUCHING_PX ? [`${nameOf(field)} “${text}” ${Math.round(over)} px too wide`] : [];
      },
    );
  };

  const overlaps = (all: readonly Seen[]): readonly string[] => {
    const boxes = all
      .flatMap((seen) => seen.boxes.map((box) => ({ seen, box, anchor: anchorOf(seen.holder) })))
      .sort((a, b) => a.box.top - b.box.top);
    const found: string[] = [];
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1)) {
        if (b.box.top > a.box.bottom) break;
        if (a.seen === b.seen || a.seen.layer !== b.seen.layer || a.anchor !== b.anchor) continue;
        const wide = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const high = Math.min(a.box.bottom, b.box.bottom) - b.box.top;
        if (wide > TOUCHING_PX && high > TOUCHING_PX)
          found.push(
            `${nameOf(a.seen.holder)} “${a.seen.text.slice(0, 40)}” lies over ${nameOf(b.seen.holder)} “${b.seen.text.slice(0, 40)}”`,
          );
      }
    });
    return found;
  };

  Object.assign(window, {
    __unfit: (): readonly string[] => {
      // What waits to be laid out until it is scrolled to has no place yet.
      if (document.adoptedStyleSheets.every((one) => one !== laidOut))
        document.adoptedStyleSheets = [...document.adoptedStyleSheets, laidOut];
      const all = seenTexts();
      // A table may scroll sideways; a page or a dialog must not.
      const wide = [document.documentElement, ...document.querySelectorAll('dialog[open]')].flatMap((box) => {
        const tooWide = box.scrollWidth - box.clientWidth;
        const over = all.find(
          (seen) =>
            box.contains(seen.holder) &&
            leaves(seen) === null &&
            anchorOf(seen.holder) === anchorOf(box) &&
            seen.boxes.some((one) => one.left < 0 || one.right > box.clientWidth),
        );
        return tooWide > 0
          ? [`${nameOf(box)} ${tooWide} px too wide, perhaps for “${over?.text ?? ''}”`]
          : [];
      });
      const cut = all.flatMap((seen) => {
        const how = leaves(seen);
        return how === null ? [] : [`${nameOf(seen.holder)} “${seen.text.slice(0, 60)}” ${how}`];
      });
      return [...new Set([...wide, ...cut, ...cutInFields(), ...overlaps(all)])];
    },
  });
}

interface Asked {
  readonly __unfit: () => readonly string[];
}

/** What does not fit on the page as it is. */
export const unfitOn = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (window as unknown as Asked).__unfit());

/** Texts of the instruments at a moment, by the style that holds them. */
export type HudMoment = Readonly<Record<string, string>>;

/** Writes each moment into the instruments of the ride on the screen, and says what does not fit then. */
export const unfitInHud = (page: Page, moments: readonly HudMoment[]): Promise<readonly string[]> =>
  page.evaluate((all) => {
    const found = new Set<string>();
    for (const hidden of document.querySelectorAll('.hud-stop, .hud-reserve'))
      hidden.removeAttribute('hidden');
    for (const moment of all) {
      for (const [style, text] of Object.entries(moment))
        for (const one of document.querySelectorAll<HTMLElement>(`.${style}`)) {
          one.textContent = text;
          // As the instruments themselves tell the style sheet.
          one.style.setProperty('--letters', String(text.length));
          one.closest('.hud-empty')?.classList.remove('hud-empty');
        }
      for (const one of (window as unknown as Asked).__unfit()) found.add(one);
    }
    return [...found];
  }, moments);
