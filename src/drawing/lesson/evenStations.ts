import type { Piece } from "../../core/index";

/** Into how many even spaces the girth is divided; stations added between do not count. */
export function evenStations({ stations }: Piece): number {
  return stations.filter(({ mark }) => mark === "even").length;
}
