import { create } from "zustand";
import type { Vec2 } from "../../core/index";
import type { PaperName } from "../../drawing/sheets/papers";
import { askToOpen, endPictureDesk } from "./pictureDesk";
import type { PictureFault } from "./pictureFault";

// The picture that is open, and what is marked in it. Both are gone with the page: nothing of them is kept or sent.

export interface Picture {
  readonly name: string;
  readonly url: string;
  /** Pixels worked with. */
  readonly width: number;
  readonly height: number;
}

/** By what the picture is measured: the rectangle of the stretch-out, the sheet of paper, points of one's own. */
export type KnownBy = "rectangle" | "sheet" | "own";

/**
 * A known point: one of the four corners, one half way along the lower or the upper side of the rectangle (4, 5), or one of one's own;
 * its place on the paper as typed, empty: where it should be.
 */
export interface KnownPoint {
  readonly id: string;
  readonly corner: 0 | 1 | 2 | 3 | 4 | 5 | null;
  readonly x: string;
  readonly y: string;
}

export interface Photo {
  readonly picture: Picture | null;
  /** The name of a file that is being opened. */
  readonly opening: string | null;
  readonly fault: { readonly name: string; readonly fault: PictureFault } | null;
  readonly by: KnownBy;
  readonly sheet: PaperName;
  readonly points: readonly KnownPoint[];
  /** Places in the picture (pixels) by the id of a point, "start" and "end" for the base line. */
  readonly places: Readonly<Record<string, Vec2>>;
  /** The point that the next press places, and the one last placed or moved. */
  readonly inHand: string | null;
  readonly last: string | null;
}

export const baseEnds = ["start", "end"] as const;

const corners: readonly KnownPoint[] = ([0, 1, 2, 3] as const).map((corner) => ({ id: `corner-${corner}`, corner, x: "", y: "" }));
const unmarked = { points: corners, places: {}, inHand: "corner-0", last: null };

export const usePhoto = create<Photo>()(() => ({ picture: null, opening: null, fault: null, by: "rectangle", sheet: "A3", ...unmarked }));

/** Opens a picture; one that cannot be opened is said, and the one before stays. */
export async function openPhoto(file: File): Promise<boolean> {
  const { name } = file;
  usePhoto.setState({ opening: name, fault: null });
  const said = await askToOpen(file).catch(() => null);
  // Another was asked for meanwhile.
  if (usePhoto.getState().opening !== name) return false;
  if (said?.kind !== "opened") {
    usePhoto.setState({ opening: null, fault: { name, fault: said?.kind === "fault" ? said.fault : { kind: "not-here" } } });
    return false;
  }
  letGo();
  usePhoto.setState({ opening: null, picture: { name, url: URL.createObjectURL(said.blob), width: said.width, height: said.height }, ...unmarked });
  return true;
}

/** Puts the picture away. */
export function putPhotoAway(): void {
  letGo();
  endPictureDesk();
  usePhoto.setState({ picture: null, opening: null, fault: null, ...unmarked });
}

/** Measures the picture by something else; corners stay where they are marked only by another choice of the sheet. */
export function measureBy(by: KnownBy): void {
  usePhoto.setState({ by, ...unmarked });
}

/** Ids of all that can be placed, in their order. */
export function placeable({ by, points }: Pick<Photo, "by" | "points">): string[] {
  return [...points.map(({ id }) => id), ...(by === "rectangle" ? [] : baseEnds)];
}

/** Places a point; when it was in hand, the next that has no place is taken in hand. */
export function placePoint(id: string, place: Vec2): void {
  usePhoto.setState((photo) => {
    const { picture, inHand } = photo;
    if (!picture) return {};
    const within = { x: Math.min(picture.width, Math.max(0, place.x)), y: Math.min(picture.height, Math.max(0, place.y)) };
    const places = { ...photo.places, [id]: within };
    return { places, last: id, inHand: inHand === id ? (placeable(photo).find((other) => !places[other]) ?? null) : inHand };
  });
}

export function takePoint(id: string | null): void {
  usePhoto.setState({ inHand: id });
}

/** One more point, in hand: of the rectangle one half way along its sides while there is one, else one of one's own. */
export function addPoint(): void {
  usePhoto.setState(({ by, points }) => {
    const half = by === "rectangle" ? ([4, 5] as const).find((corner) => points.every((point) => point.corner !== corner)) : undefined;
    if (half !== undefined) return { points: [...points, { id: `corner-${half}`, corner: half, x: "", y: "" }], inHand: `corner-${half}` };
    const id = `own-${1 + Math.max(0, ...points.map((point) => Number(/^own-(\d+)$/.exec(point.id)?.[1] ?? 0)))}`;
    return { points: [...points, { id, corner: null, x: "", y: "" }], inHand: id };
  });
}

/** Takes away a point that was added, or the mark of a corner or an end. */
export function removePoint(id: string): void {
  usePhoto.setState(({ points, places }) => {
    const { [id]: _, ...others } = places;
    const own = points.some((point) => point.id === id && isAdded(point));
    return { points: own ? points.filter((point) => point.id !== id) : points, places: others, inHand: own ? null : id, last: null };
  });
}

/** Whether a point is there because it was asked for. */
export function isAdded({ corner }: KnownPoint): boolean {
  return corner === null || corner > 3;
}

/** What is typed for the place of a point on the paper. */
export function typePoint(id: string, typed: { readonly x?: string; readonly y?: string }): void {
  usePhoto.setState(({ points }) => ({ points: points.map((point) => (point.id === id ? { ...point, ...typed } : point)) }));
}

function letGo(): void {
  const { picture } = usePhoto.getState();
  if (picture) URL.revokeObjectURL(picture.url);
}
