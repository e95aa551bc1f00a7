import { describe, expect, it } from "vitest";
import { fault } from "./direction";
import { type Import, importsOf, sourceFiles, specifiers } from "./importsOf";

const path = (file: string, target: string) => fault({ file, target, package: false });
const named = (file: string, target: string) => fault({ file, target, package: true });

describe("imports of src", () => {
  const imports = sourceFiles(".ts", ".tsx").flatMap(importsOf);

  it("are found in the source", () => {
    expect(imports.length).toBeGreaterThan(100);
  });

  it("all run the right way, and each package stays in its folder", () => {
    expect(imports.map(fault).filter((one) => one !== null).join("\n")).toBe("");
  });
});

describe("circles", () => {
  const without = (path: string) => path.replace(/\.tsx?$/, "");

  it("of two files are found", () => {
    expect(circles([{ file: "app/a.ts", target: "app/b", package: false }, { file: "app/b.tsx", target: "app/a", package: false }, { file: "app/b.tsx", target: "app/c", package: false }])).toEqual(["app/a and app/b"]);
  });

  it("of two files are none above the core: what both need has a file of its own", () => {
    expect(circles(sourceFiles(".ts", ".tsx").filter((file) => !file.startsWith("core/")).flatMap(importsOf))).toEqual([]);
  });

  function circles(imports: readonly Import[]): string[] {
    const all = new Set(imports.map(({ file, target }) => `${without(file)} ${without(target)}`));
    return [...all].map((one) => one.split(" ")).filter(([a = "", b = ""]) => a < b && all.has(`${b} ${a}`)).map(([a, b]) => `${a} and ${b}`);
  }
});

describe("fault", () => {
  it("refuses an import from a lower folder of the core to a higher one", () => {
    expect(path("core/geometry/path.ts", "core/cut/cutter")).toContain("geometry may not import");
    expect(path("core/trim/trim.ts", "core/unroll/pattern")).toContain("trim may not import");
    expect(path("core/numeric/angle.ts", "core/index")).toContain("numeric may not import");
  });

  it("lets a higher folder import a lower one, and files of one folder each other", () => {
    expect(path("core/cut/removed.ts", "core/numeric/angle")).toBeNull();
    expect(path("core/cut/removed.ts", "core/cut/cutter")).toBeNull();
    expect(path("core/index.ts", "core/inspect/adequacy")).toBeNull();
  });

  it("refuses the core past its door, and the layers above from below", () => {
    expect(path("drawing/view.ts", "core/job/job")).toContain("past the door");
    expect(path("app/store.ts", "core/job/job")).toContain("past the door");
    expect(path("core/form/pipe.ts", "app/words")).toContain("knows nothing");
    expect(path("drawing/view.ts", "output/svg/svg")).toContain("only the core");
    expect(path("output/svg/svg.ts", "output/csv/table")).toContain("output format");
    expect(path("output/svg/svg.ts", "app/words")).toContain("output format");
  });

  it("refuses an import from a lower folder of the drawing to a higher one, and from the files beside them to any", () => {
    expect(path("drawing/view/views.ts", "drawing/board/board")).toContain("view may not import");
    expect(path("drawing/box.ts", "drawing/view/views")).toContain("drawing may not import");
    expect(path("drawing/elsewhere/one.ts", "drawing/view/views")).toContain("no folder of the drawing");
    expect(path("drawing/lesson/lessonPages.ts", "drawing/sheets/sheetPages")).toBeNull();
    expect(path("drawing/board/board.ts", "drawing/box")).toBeNull();
  });

  it("lets each layer use those below it", () => {
    expect(path("drawing/view.ts", "core/index")).toBeNull();
    expect(path("output/svg/svg.ts", "drawing/pens")).toBeNull();
    expect(path("output/svg/svg.ts", "output/svg/number")).toBeNull();
    expect(path("app/board/Board.tsx", "output/svg/svg")).toBeNull();
  });

  it("refuses a package outside its folder, or without one", () => {
    expect(named("drawing/view.ts", "react")).toContain("belongs to src/app");
    expect(named("core/cut/cutter.ts", "valibot")).toContain("belongs to src/core/job");
    expect(named("app/store.ts", "lodash")).toContain("no home");
    expect(named("app/main.tsx", "node:fs")).toContain("no home");
    expect(named("app/main.tsx", "react-dom/client")).toBeNull();
  });
});

describe("specifiers", () => {
  it("finds every form of import", () => {
    const text = `import a from "./a"; import "./b"; import type { C } from "./c"; export * from "./d"; const e = import("./e"); let f: import("./f").F;`;
    expect(specifiers("one.ts", text)).toEqual(["./a", "./b", "./c", "./d", "./e", "./f"]);
  });
});
