/** The entries but those of these keys. */
export function without<T>(entries: Readonly<Record<string, T>>, ...keys: readonly string[]): Record<string, T> {
  return Object.fromEntries(Object.entries(entries).filter(([name]) => !keys.includes(name)));
}
