import type { ClauseKind } from "../describe/token";

/** The name under which a field is explained: the kind of its clause and its own path in the job file, without the numbers in it and for both ends alike. */
export function helpName(kind: ClauseKind, field: string): string {
  const own = field.replace(/^part\.cuts\.\d+\.|^(part|development|fabrication)\./, "");
  const bothEnds = own.replace(/^(edges|plates)\.(top|bottom)\./, "$1.");
  return `${kind}.${bothEnds.replace(/\.\d+(?=\.|$)/g, "")}`;
}
