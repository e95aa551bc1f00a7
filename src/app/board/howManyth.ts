/** Names things told one after the other: each by its kind and the how manyth of that it is. */
export function howManyth(): (kind: string) => string {
  const counts = new Map<string, number>();
  return (kind) => {
    const count = counts.get(kind) ?? 0;
    counts.set(kind, count + 1);
    return `${kind} ${count}`;
  };
}
