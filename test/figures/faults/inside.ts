/**
 * Breaks one thing inside a page before its own scripts run. `breakInside` is sent to the browser as text, so it uses
 * nothing from outside itself; it calls `window.struck` each of the first times the fault happens.
 */
import type { Moment, PageFault } from './types.ts';

declare global {
  interface Window {
    /** How far the journey has come; set by whoever drives. */
    faultMoment: Moment;
    /** Runs as long as the page does; a ride that stands still while it counts is frozen. */
    pageTicks: number;
    /** Calls of what is counted, by moment and path. */
    calls: Record<string, number>;
    struck: () => Promise<void>;
  }
}

type Callable = (this: unknown, ...given: unknown[]) => unknown;

/** Runs in the browser. */
export function breakInside(fault: PageFault | null): void {
  const order = ['start', 'opened', 'acting', 'riding', 'over', 'done'];
  window.faultMoment = 'start';
  window.pageTicks = 0;
  window.calls = {};
  window.setInterval(() => {
    window.pageTicks += 1;
  }, 50);
  if (fault === null) return;
  let strikes = 0;
  const strike = (): void => {
    strikes += 1;
    if (strikes <= 3) void window.struck();
  };
  const reached = (from: Moment): boolean => order.indexOf(window.faultMoment) >= order.indexOf(from);
  /** Stands for `this` where something is called with `new`. */
  const anew = {};
  const DOM = DOMException;
  const later = Promise;
  const failure = (name: string): Error =>
    name === 'Error' ? new Error('broken on purpose') : new DOM('broken on purpose', name);

  /** The object a path ends in and its last name, or null where the browser has none. */
  const find = (path: string): { holder: object; name: string } | null => {
    const names = path.split('.');
    const name = names.pop() ?? '';
    let holder: unknown = window;
    for (const one of names) holder = (holder as Record<string, unknown> | undefined)?.[one];
    if (holder === null || (typeof holder !== 'object' && typeof holder !== 'function')) return null;
    let owner: object | null = holder;
    while (owner !== null && !Object.hasOwn(owner, name))
      owner = Object.getPrototypeOf(owner) as object | null;
    return owner === null ? null : { holder: owner, name };
  };

  /** Puts `around` in the place of a function or a getter. */
  const wrap = (path: string, around: (original: Callable) => Callable): void => {
    const found = find(path);
    if (found === null) return;
    const { holder, name } = found;
    const there = Object.getOwnPropertyDescriptor(holder, name) as PropertyDescriptor;
    if (there.get !== undefined) {
      const put = around(function (this: unknown) {
        return Reflect.apply(Reflect.get(there, 'get') as Callable, this, []);
      });
      Object.defineProperty(holder, name, { ...there, get: put as () => unknown });
    } else {
      const original = there.value as Callable;
      const put = around(original);
      // A class is called with `new`.
      const value =
        /^class|\[native code\]/.test(String(original)) && Object.hasOwn(original, 'prototype')
          ? new Proxy(original as unknown as new () => object, {
              construct: (_target, given) => put.apply(anew, given as unknown[]) as object,
            })
          : put;
      Object.defineProperty(holder, name, { configurable: true, writable: true, value });
    }
  };

  const construct = (original: Callable, self: unknown, given: unknown[]): unknown =>
    self === anew
      ? (Reflect.construct(original as unknown as new () => object, given) as object)
      : Reflect.apply(original, self, given);

  if (fault.what === 'count') {
    for (const path of fault.paths)
      wrap(
        path,
        (original) =>
          function (this: unknown, ...given) {
            const key = `${window.faultMoment} ${path}`;
            window.calls[key] = (window.calls[key] ?? 0) + 1;
            return construct(original, this, given);
          },
      );
    return;
  }
  if (fault.what === 'absent') {
    const found = find(fault.path);
    if (found === null) return;
    delete (found.holder as Record<string, unknown>)[found.name];
    if (found.name in found.holder)
      Object.defineProperty(found.holder, found.name, { configurable: true, value: undefined });
    strike();
    return;
  }
  if (fault.what === 'clock') {
    const { byMs, from } = fault;
    const Real = Date;
    const turned = (): number => {
      if (!reached(from)) return Real.now();
      strike();
      return Real.now() + byMs;
    };
    window.Date = new Proxy(Real, {
      construct: (target, given: unknown[]) =>
        Reflect.construct(target, given.length === 0 ? [turned()] : given) as object,
      get: (target, name) => (name === 'now' ? turned : (Reflect.get(target, name) as unknown)),
    });
    return;
  }
  if (fault.what === 'worker') {
    const { script, ends } = fault;
    const Real = Worker;
    window.Worker = new Proxy(Real, {
      construct(target, given: unknown[]) {
        if (!String(given[0]).includes(script)) return Reflect.construct(target, given) as object;
        strike();
        if (ends === 'at-start') throw failure('SecurityError');
        const worker = Reflect.construct(target, given) as Worker;
        const dies = (): void => {
          worker.terminate();
          worker.dispatchEvent(new ErrorEvent('error', { message: 'broken on purpose', cancelable: true }));
        };
        if (ends === 'silent') worker.postMessage = () => undefined;
        if (ends === 'with-an-error') window.setTimeout(dies, 20);
        if (ends === 'in-mid-work')
          worker.postMessage = (...message: unknown[]) => {
            Real.prototype.postMessage.apply(worker, message as [unknown]);
            // As a system does that needs the memory: nobody is told.
            window.setTimeout(() => worker.terminate(), 5);
          };
        if (ends === 'unreadably')
          worker.postMessage = () => void worker.dispatchEvent(new MessageEvent('messageerror'));
        return worker;
      },
    });
    return;
  }

  const { path, misdeed, error, nth, forever, from } = fault;
  let calls = 0;
  wrap(
    path,
    (original) =>
      function (this: unknown, ...given) {
        if (!reached(from)) return construct(original, this, given);
        calls += 1;
        if (forever ? calls < nth : calls !== nth) return construct(original, this, given);
        strike();
        if (misdeed === 'throws') throw failure(error);
        if (misdeed === 'rejects') return later.reject(failure(error));
        if (misdeed === 'never-settles') return new later(() => undefined);
        if (misdeed === 'gives-null') return null;
        if (misdeed === 'does-nothing') return undefined;
        if (misdeed === 'closes') {
          const database = this as IDBDatabase;
          database.close();
          window.setTimeout(() => database.dispatchEvent(new Event('close')), 0);
          return construct(original, this, given);
        }
        const made = construct(original, this, given) as EventTarget & { transaction?: IDBTransaction };
        if (misdeed === 'aborts') made.transaction?.abort();
        else made.addEventListener = () => undefined;
        return made;
      },
  );
}
