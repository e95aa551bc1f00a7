import type { TradeWords } from "../../drawing/tradeWords";
import { photoWords } from "../words/photo";
import { placeable, type Photo } from "./photo";

/** What a point is called on the screen. */
export function pointName(id: string, photo: Pick<Photo, "by" | "points">, trade: TradeWords): string {
  if (id === "start" || id === "end") return photoWords.ends[id];
  const corner = photo.points.find((point) => point.id === id)?.corner ?? null;
  return (corner === null ? undefined : photoWords.pointNames(photo.by, trade)[corner]) ?? photoWords.ownName(placeable(photo).indexOf(id) + 1);
}
