/** Locks as a browser hands them out, but one who finds a lock taken is refused at once instead of waiting. */
export function fakeLocks() {
  const held = new Set<string>();
  return {
    async request(name: string, _options: object, work: () => Promise<void>): Promise<void> {
      if (held.has(name)) throw new DOMException("waited too long", "TimeoutError");
      held.add(name);
      await work();
      held.delete(name);
    },
    query: () => Promise.resolve({ held: [...held].map((name) => ({ name })) }),
  };
}
