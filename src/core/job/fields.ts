// Is this unknown data something with fields?

export type Fields = Record<string, unknown>;

export function isFields(data: unknown): data is Fields {
  return typeof data === "object" && data !== null && !Array.isArray(data);
}
