/** The one place that hears of everything that went wrong. */
import { beforeEach, describe, expect, it } from 'vitest';
import { openTroubleLog, type TroubleLog } from '../../../src/app/device/trouble.ts';

let told: string[] = [];
let desk: TroubleLog;
let target: EventTarget;
let onTell: () => void = () => undefined;

beforeEach(() => {
  told = [];
  onTell = () => undefined;
  target = Object.assign(new EventTarget(), { document: new EventTarget(), location: window.location });
  desk = openTroubleLog(target as unknown as Window, (kind) => {
    told.push(kind);
    onTell();
  });
});

const happen = (error: unknown, filename = `${location.origin}/assets/index.js`, message = 'x'): void => {
  target.dispatchEvent(new ErrorEvent('error', { error, filename, message }));
};

describe('the place that hears of everything', () => {
  it('is told of errors of the page, and counts the same one', () => {
    const error = new TypeError('nothing there');
    happen(error);
    happen(error);
    expect(told).toEqual(['page', 'page']);
    expect(desk.all()).toMatchObject([
      { kind: 'page', name: 'TypeError', message: 'nothing there', times: 2 },
    ]);
  });

  it('leaves out what belongs to an extension of the browser, and sizes that were watched too late', () => {
    happen(new Error('theirs'), 'chrome-extension://abc/content.js');
    happen(null, '', 'Script error.');
    happen(undefined, `${location.origin}/`, 'ResizeObserver loop completed with undelivered notifications.');
    expect([told, desk.all()]).toEqual([[], []]);
  });

  it('keeps nothing of what somebody may have typed', () => {
    desk.note('page', new SyntaxError('Unexpected token A, "Anna rides" is not valid JSON'));
    desk.note('page', new TypeError("Failed on 'Anna' at http://example.org/anna"));
    desk.note('page', 'Anna');
    expect(JSON.stringify(desk.all())).not.toMatch(/anna/i);
  });

  it('does not loop where telling goes wrong itself', () => {
    onTell = () => {
      happen(new Error('once more'));
      throw new Error('and again');
    };
    desk.report('frame', new Error('first'));
    expect(told).toEqual(['frame']);
    expect(desk.all()).toHaveLength(3);
  });

  it('remembers twenty different ones and no more', () => {
    for (let i = 0; i < 50; i += 1) desk.note('page', new TypeError(`number ${i}`));
    expect(desk.all()).toHaveLength(20);
  });
});
