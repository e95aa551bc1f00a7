import type { Way } from "../../drawing/steps/way";

// The address of a step: "#teach/carry?station=5&way=hand". The station goes by its number on the drawing. A link for others carries
// the job too, packed.

export interface TeachAddress {
  readonly step: string;
  readonly station: string | null;
  readonly way: Way;
  /** As packed. */
  readonly job: string | null;
}

export function writeAddress({ step, station, way, job }: TeachAddress): string {
  const more = new URLSearchParams({ ...(station === null ? {} : { station }), ...(way === "screen" ? {} : { way }), ...(job === null ? {} : { job }) }).toString();
  return `#teach/${step}${more && `?${more}`}`;
}

/** What an address asks for; null when it names no step. */
export function readAddress(hash: string): TeachAddress | null {
  const [, step, more = ""] = /^#teach\/([a-z0-9-]+)(?:\?(.*))?$/.exec(hash) ?? [];
  if (step === undefined) return null;
  const asked = new URLSearchParams(more);
  return { step, station: asked.get("station"), way: asked.get("way") === "hand" ? "hand" : "screen", job: asked.get("job") };
}
