/** Cache Storage for a test: the few calls that are made of it, over a map. `failing`: every write meets a full disk. */
export interface TestCaches {
  failing: boolean;
  readonly count: () => number;
}

export function newCaches(): TestCaches {
  const kept = new Map<string, Response>();
  const state: TestCaches = { failing: false, count: () => kept.size };
  const urlOf = (request: string | Request): string =>
    new URL(typeof request === 'string' ? request : request.url, 'https://notebook.example/').href;
  const cache = {
    put: async (request: string, response: Response) => {
      if (state.failing) throw new DOMException('full', 'QuotaExceededError');
      kept.set(urlOf(request), response);
    },
    match: async (request: string | Request) => kept.get(urlOf(request))?.clone(),
    keys: async () => [...kept.keys()].map((url) => new Request(url)),
    delete: async (request: string | Request) => kept.delete(urlOf(request)),
  };
  Object.defineProperty(globalThis, 'caches', {
    value: { open: async () => cache, has: async () => kept.size > 0 },
    configurable: true,
  });
  return state;
}
