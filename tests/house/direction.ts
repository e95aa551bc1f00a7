import type { Import } from "./importsOf";

/** The folders of the core from the bottom up: each may import those before it. */
const coreFolders = ["numeric", "geometry", "job", "form", "cut", "trim", "unroll", "part", "fabricate", "inspect", "variant"];

/**
 * The folders of the drawing from the bottom up: each may import those before it, and the files beside the folders, which draw
 * nothing by themselves.
 */
const drawingFolders = ["view", "dimension", "blank", "pattern", "board", "station", "steps", "handles", "compared", "miniature", "pictorial", "sheets", "lesson", "overlay"];

/** The only door to the core, as imported. */
const door = ["core/index", "core"];

/** Where a package may be imported; everything else is refused. A folder named here covers those below it. */
const packageHomes: Readonly<Record<string, string>> = {
  valibot: "core/job",
  fflate: "app/class",
  papaparse: "app/class",
  pdfkit: "output/pdf",
  react: "app",
  "react-dom": "app",
  zundo: "app",
  zustand: "app",
  uqr: "app/class",
  vite: "app",
};

/** Why the import runs the wrong way, or null when it may stand. */
export function fault(one: Import): string | null {
  return one.package ? packageFault(one) : pathFault(one);
}

function packageFault({ file, target }: Import): string | null {
  const name = target.split("/").slice(0, target.startsWith("@") ? 2 : 1).join("/");
  const home = packageHomes[name];
  if (home === undefined) return `${file}: the package ${name} has no home in src`;
  return file.startsWith(`${home}/`) ? null : `${file}: ${name} belongs to src/${home}`;
}

function pathFault({ file, target }: Import): string | null {
  const [from, to] = [layerOf(file), layerOf(target)];
  if (target.startsWith("..")) return `${file}: ${target} lies outside src`;
  if (from === "core") return to === "core" ? coreFault(file, target) : `${file}: the core knows nothing of ${target}`;
  if (to === "core") return door.includes(target) ? null : `${file}: ${target} is entered past the door, core/index`;
  if (from === "drawing" && to === "drawing") return folderFault("drawing", drawingFolders, file, target);
  if (from === to && from !== "output") return null;
  if (from === "drawing") return `${file}: the drawing knows only the core, not ${target}`;
  if (from === "output") return to === "drawing" || formatOf(file) === formatOf(target) ? null : `${file}: an output format knows the drawing and the core, not ${target}`;
  if (from === "app") return null;
  return `${file}: lies in no layer`;
}

function coreFault(file: string, target: string): string | null {
  if (folderOf(file) === null) return target === "core/index" ? `${file}: the core's own files do not use its door` : null;
  return folderOf(target) === null ? `${file}: ${folderOf(file)} may not import ${target}` : folderFault("core", coreFolders, file, target);
}

/** Within a layer: folders from the bottom up, each of which may use those before it and the files beside them. */
function folderFault(layer: string, folders: readonly string[], file: string, target: string): string | null {
  const [from, to] = [folderOf(file), folderOf(target)];
  if (from === to || (from !== null && to === null)) return null;
  if (from !== null && !folders.includes(from)) return `${file}: ${from} is no folder of the ${layer}`;
  return from !== null && folders.slice(0, folders.indexOf(from)).includes(to!) ? null : `${file}: ${from ?? layer} may not import ${target}`;
}

function layerOf(path: string): string {
  return path.split("/")[0] ?? "";
}

/** The folder below the layer, or null for files that lie beside the folders. */
function folderOf(path: string): string | null {
  const parts = path.split("/");
  return parts.length > 2 ? (parts[1] ?? null) : null;
}

function formatOf(path: string): string {
  return path.split("/").slice(0, 2).join("/");
}
