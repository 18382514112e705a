/** Workers whose two ends are in one thread: what goes between them is cloned and arrives in a task of its own. */
import type { Workplace } from '../../src/worker/line.ts';
import { answering } from '../../src/worker/rpc.ts';

type Asked = Parameters<ReturnType<typeof answering>>[0];
type Told = Parameters<Parameters<typeof answering>[1]>[0];

/** A worker of which nothing is ever heard; it can be told to break. */
export class SilentWorker extends EventTarget {
  readonly asked: Asked[] = [];
  ended = false;

  postMessage(asked: Asked): void {
    this.asked.push(structuredClone(asked));
  }

  terminate(): void {
    this.ended = true;
  }

  breakDown(): void {
    this.dispatchEvent(new Event('error'));
  }

  /** As the sources take it. */
  get worker(): Worker {
    return this as unknown as Worker;
  }
}

/** One that cannot be loaded. */
export class BrokenWorker extends SilentWorker {
  override postMessage(asked: Asked): void {
    super.postMessage(asked);
    setTimeout(() => this.breakDown(), 0);
  }
}

/** One that works. */
export class NearWorker extends SilentWorker {
  readonly told: Told[] = [];
  private readonly take: (asked: Asked) => void;

  constructor(service: object) {
    super();
    this.take = answering(service as never, (told) => {
      const data = structuredClone(told);
      this.told.push(data);
      setTimeout(() => this.ended || this.dispatchEvent(new MessageEvent('message', { data })), 0);
    });
  }

  override postMessage(asked: Asked): void {
    super.postMessage(asked);
    const clone = structuredClone(asked);
    setTimeout(() => this.ended || this.take(clone), 0);
  }
}

/** The given worker, or none, and the service for this thread. */
export const workplaceOf = <Service>(
  create: () => Service,
  start: () => Worker | null = () => null,
): Workplace<Service> => ({ start, here: async () => create() });
