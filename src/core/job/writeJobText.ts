import type { Job } from "./job";

// The text of a job file: the same job gives the same text, whatever order its fields were made in.

/** Every field name of a job in the order of writing; the same order at every level. */
const FIELD_ORDER = [
  ...["format", "version", "title", "note", "units"],
  ...["part", "development", "drawing", "fabrication", "marking", "readings", "exercise"],
  ...["id", "on", "kind", "shape", "end"],
  ...["diameter", "basis", "thickness", "width", "length", "attitude"],
  ...["field", "from"],
  ...["at", "angle", "radius", "low", "high", "rising", "position"],
  ...["outline", "direction", "x", "z", "start", "to", "centre", "height", "offset", "through"],
  ...["turn", "long", "legs", "profile", "cuts"],
  ...["purpose", "surface", "kFactor", "paper", "hand", "material", "density", "gauge", "quantity"],
  ...["seam", "stations", "critical", "extra", "face"],
  ...["projection", "sheetScale"],
  ...["tolerance", "girth", "scale", "count", "along", "text", "marks", "by", "items", "values"],
  ...["step", "ranges", "seams", "hands", "inside", "ordinate", "sheet", "keeps", "seed"],
  ...["edges", "plates", "top", "bottom", "wire", "gap", "share", "slits", "fit"],
];

/** JSON with two spaces of indent and a newline at the end; `readJobText` gives back an equal job. */
export function writeJobText(job: Job): string {
  return `${JSON.stringify(job, FIELD_ORDER, 2)}\n`;
}
