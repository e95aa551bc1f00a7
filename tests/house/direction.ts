import type { Import } from "./importsOf";

/** The folders of the core from the bottom up: each may import those before it. */
const coreFolders = ["numeric", "geometry", "job", "form", "cut", "trim", "unroll", "part", "fabricate", "inspect", "variant"];

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
  if (from === to && from !== "output") return null;
  if (from === "drawing") return `${file}: the drawing knows only the core, not ${target}`;
  if (from === "output") return to === "drawing" || formatOf(file) === formatOf(target) ? null : `${file}: an output format knows the drawing and the core, not ${target}`;
  if (from === "app") return null;
  return `${file}: lies in no layer`;
}

function coreFault(file: string, target: string): string | null {
  const [from, to] = [coreFolderOf(file), coreFolderOf(target)];
  if (from === null) return to === null && target === "core/index" ? `${file}: the core's own files do not use its door` : null;
  if (from === to) return null;
  const place = coreFolders.indexOf(from);
  if (place < 0) return `${file}: ${from} is no folder of the core`;
  if (to !== null && coreFolders.slice(0, place).includes(to)) return null;
  return `${file}: ${from} may not import ${target}`;
}

function layerOf(path: string): string {
  return path.split("/")[0] ?? "";
}

/** The folder below core, or null for files that lie in core itself (the door and what it composes). */
function coreFolderOf(path: string): string | null {
  const parts = path.split("/");
  return parts.length > 2 ? (parts[1] ?? null) : null;
}

function formatOf(path: string): string {
  return path.split("/").slice(0, 2).join("/");
}
