// A cut drawing as a DXF file of release 2000, the first with units of its own and light polylines; every part the format asks for.

import { CUT_LAYERS } from "../../drawing/blank/cutLayers";
import { boundsOf } from "../../drawing/bounds";
import type { Item } from "../../drawing/display";
import { entitiesOf } from "./entities";
import type { Curves, Entity } from "./entity";
import { LAYER_TABLE, LINE_PATTERNS, layerName } from "./layerTable";
import { type Tag, tagLines } from "./tag";

export interface DxfOptions {
  /** The file's own unit; $INSUNITS says which. */
  readonly units: "mm" | "inch";
  /** "arcs" unless given. */
  readonly curves?: Curves;
  /** Curves become arcs within so many mm; 0.005 unless given. Splines are the drawing's own curves. */
  readonly tolerance?: number;
}

const TOLERANCE = 0.005;
const MM_AN_INCH = 25.4;

/** Handles of what the entities refer to; the rest are counted on from `FREE`. */
const ROOT = "C", GROUPS = "D", MODEL = "1F", PAPER = "1B", FREE = 0x100;

/** The file as text, ASCII throughout; the same items always give the same text. @throws RangeError for a tolerance that is not above 0. */
export function dxfFile(items: readonly Item[], { units, curves = "arcs", tolerance = TOLERANCE }: DxfOptions): string {
  const scale = units === "mm" ? 1 : 1 / MM_AN_INCH;
  const handles = counter();
  const tables = section("TABLES", tablesOf(scale, handles));
  const blocks = section("BLOCKS", [...blockOf("*Model_Space", MODEL, handles), ...blockOf("*Paper_Space", PAPER, handles)]);
  const entities = section("ENTITIES", entitiesOf(items, { curves, tolerance, scale }).flatMap((entity) => tagsOf(entity, handles())));
  const objects = section("OBJECTS", [
    [0, "DICTIONARY"], [5, ROOT], [330, "0"], [100, "AcDbDictionary"], [281, 1], [3, "ACAD_GROUP"], [350, GROUPS],
    [0, "DICTIONARY"], [5, GROUPS], [330, ROOT], [100, "AcDbDictionary"], [281, 1],
  ]);
  const header = section("HEADER", headerOf(items, units, scale, handles()));
  return tagLines([...header, ...section("CLASSES", []), ...tables, ...blocks, ...entities, ...objects, [0, "EOF"]]);
}

/** Hexadecimal handles, each once. */
function counter(): () => string {
  let last = FREE;
  return () => (last++).toString(16).toUpperCase();
}

function section(name: string, tags: readonly Tag[]): Tag[] {
  return [[0, "SECTION"], [2, name], ...tags, [0, "ENDSEC"]];
}

function headerOf(items: readonly Item[], units: DxfOptions["units"], scale: number, seed: string): Tag[] {
  const { left, right, bottom, top } = boundsOf(items);
  const [low, high] = left <= right ? [[left, bottom], [right, top]] : [[0, 0], [0, 0]];
  const corner = ([x = 0, y = 0]: readonly number[]): Tag[] => [[10, x * scale], [20, y * scale], [30, 0]];
  return [
    [9, "$ACADVER"], [1, "AC1015"], [9, "$DWGCODEPAGE"], [3, "ANSI_1252"], [9, "$HANDSEED"], [5, seed],
    [9, "$INSUNITS"], [70, units === "mm" ? 4 : 1], [9, "$MEASUREMENT"], [70, units === "mm" ? 1 : 0], [9, "$LTSCALE"], [40, 1],
    [9, "$EXTMIN"], ...corner(low ?? []), [9, "$EXTMAX"], ...corner(high ?? []),
  ];
}

function tablesOf(scale: number, handles: () => string): Tag[] {
  const table = (name: string, records: readonly Tag[][], own: (handle: string) => readonly Tag[] = () => []): Tag[] => {
    const handle = handles();
    const owned = records.flatMap(([kind, ...rest]) => (kind ? [kind, ...rest.map((tag): Tag => (tag[0] === 330 && tag[1] === "" ? [330, handle] : tag))] : []));
    return [[0, "TABLE"], [2, name], [5, handle], [330, "0"], [100, "AcDbSymbolTable"], [70, records.length], ...own(handle), ...owned, [0, "ENDTAB"]];
  };
  const record = (kind: string, subclass: string, name: string, more: readonly Tag[], handle = handles()): Tag[] =>
    [[0, kind], [5, handle], [330, ""], [100, "AcDbSymbolTableRecord"], [100, subclass], [2, name], ...more];
  const line = (name: string, pattern: readonly number[]) => record("LTYPE", "AcDbLinetypeTableRecord", name, [
    [70, 0], [3, ""], [72, 65], [73, pattern.length], [40, pattern.reduce((sum, part) => sum + Math.abs(part), 0) * scale],
    ...pattern.flatMap((part): Tag[] => [[49, part * scale], [74, 0]]),
  ]);
  const layer = (name: string, colour: number, kind: string) => record("LAYER", "AcDbLayerTableRecord", name, [[70, 0], [62, colour], [6, kind]]);
  return [
    ...table("VPORT", []),
    ...table("LTYPE", [line("ByBlock", []), line("ByLayer", []), line("CONTINUOUS", []), ...Object.entries(LINE_PATTERNS).map(([name, pattern]) => line(name, pattern))]),
    ...table("LAYER", [layer("0", 7, "CONTINUOUS"), ...CUT_LAYERS.map((one) => layer(layerName(one), LAYER_TABLE[one].colour, LAYER_TABLE[one].line))]),
    ...table("STYLE", [record("STYLE", "AcDbTextStyleTableRecord", "STANDARD", [[70, 0], [40, 0], [41, 1], [50, 0], [71, 0], [42, 2.5 * scale], [3, "txt"], [4, ""]])]),
    ...table("VIEW", []), ...table("UCS", []),
    ...table("APPID", [record("APPID", "AcDbRegAppTableRecord", "ACAD", [[70, 0]])]),
    ...table("DIMSTYLE", [], () => [[100, "AcDbDimStyleTable"]]),
    ...table("BLOCK_RECORD", [record("BLOCK_RECORD", "AcDbBlockTableRecord", "*Model_Space", [[340, "0"]], MODEL), record("BLOCK_RECORD", "AcDbBlockTableRecord", "*Paper_Space", [[340, "0"]], PAPER)]),
  ];
}

function blockOf(name: string, owner: string, handles: () => string): Tag[] {
  return [
    [0, "BLOCK"], [5, handles()], [330, owner], [100, "AcDbEntity"], [8, "0"], [100, "AcDbBlockBegin"], [2, name], [70, 0], [10, 0], [20, 0], [30, 0], [3, name], [1, ""],
    [0, "ENDBLK"], [5, handles()], [330, owner], [100, "AcDbEntity"], [8, "0"], [100, "AcDbBlockEnd"],
  ];
}

function tagsOf({ kind, layer, tags }: Entity, handle: string): Tag[] {
  return [[0, kind], [5, handle], [330, MODEL], [100, "AcDbEntity"], [8, layer], ...tags];
}
