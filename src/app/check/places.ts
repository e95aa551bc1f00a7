import type { Job, Piece, ReadLine, ReadingPlace, Station } from "../../core/index";

// What can be read off a drawing of this piece: the stretch-out, one space, the angle of every slanting cut, and station by station the
// ordinates that are not the same all round.

export interface ReadRow {
  /** The station's number. */
  readonly label: string;
  readonly at: number;
  /** Index among the stations of the piece, null with another count of spaces. */
  readonly station: number | null;
}

/** Rows that have the same lines to read: the ends at every station, the opening where it is. */
export interface ReadBlock {
  readonly lines: readonly ReadLine[];
  readonly rows: readonly ReadRow[];
}

export interface ReadPlaces {
  /** Ids of the cuts whose angle can be read. */
  readonly angles: readonly string[];
  readonly blocks: readonly ReadBlock[];
}

/** mm: an end that varies less is level. */
const LEVEL = 1e-6;

/** The places of a piece for a drawing of `count` spaces; `own`: numbered as the piece is, so that its added stations are read too. */
export function readPlaces(job: Job, piece: Piece, count: number, own: boolean): ReadPlaces {
  const angles = job.part.cuts.flatMap((cut) => (cut.on && cut.kind === "plane" && cut.angle > 0 ? [cut.id] : []));
  const even = piece.stations.filter(({ mark }) => mark === "even").length;
  const { girth } = piece.pattern;
  const rows = own && count === even
    ? piece.stations.map((station, i) => ({ label: station.label, at: placeOf(station, count, girth), station: i }))
    : Array.from({ length: count + 1 }, (_, k) => ({ label: String(k % count), at: k, station: null }));
  const open = rows.filter(({ station }) => (station === null ? piece.trimmed.loops.length > 1 : (piece.stations[station]?.openings.length ?? 0) > 0));
  const ends: ReadBlock = { lines: isLevel(piece.stations) ? ["top"] : ["bottom", "top"], rows };
  return { angles, blocks: open.length > 0 ? [ends, { lines: ["lower", "upper"], rows: open }] : [ends] };
}

/** The key of a place in a sheet. */
export function placeKey(place: ReadingPlace): string {
  return "at" in place ? `${place.line} ${Math.round(place.at * 1e6) / 1e6}` : place.line === "angle" ? `angle ${place.cut}` : place.line;
}

function placeOf({ mark, girth }: Station, count: number, whole: number): number {
  const at = mark === "closing" ? count : (girth * count) / whole;
  return Math.abs(at - Math.round(at)) < 1e-9 ? Math.round(at) : at;
}

/** Whether the foot is the same all round, so that nobody reads it. */
function isLevel(stations: readonly Station[]): boolean {
  const heights = stations.flatMap(({ bottom }) => bottom ?? []);
  return Math.max(...heights) - Math.min(...heights) <= LEVEL;
}
