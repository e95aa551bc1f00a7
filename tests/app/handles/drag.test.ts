// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from "vitest";
import { beginDrag, type Beside, type Drag } from "../../../src/app/handles/drag";
import type { Shown } from "../../../src/app/board/camera";
import { useInMotion } from "../../../src/app/board/inMotion";
import { replaceJob, undo } from "../../../src/app/store/changes";
import { useApp } from "../../../src/app/store/store";
import { board } from "../../../src/drawing/board/board";
import { handles } from "../../../src/drawing/handles/handles";
import { pipeJob, planeCut } from "../../support/pipeJob";

const window = { width: 320, height: 200 };

const height = () => {
  const [cut] = useApp.getState().development.job.part.cuts;
  return cut?.kind === "plane" ? cut.height : NaN;
};

/** A drag of a plane's height; ten pixels to a sheet mm. */
function begin(said: (Beside | null)[] = []): { drag: Drag; pxOf: (mm: number) => number } {
  const { development } = useApp.getState();
  const drawn = board(development, window);
  const view = { left: 0, right: 320, bottom: 0, top: 200 };
  const shown = { fit: drawn, drawn, whole: view, view, size: { width: 3200, height: 2000 }, px: 10, options: window } as unknown as Shown;
  const handle = handles(drawn, development).find(({ id }) => id === "plane.height");
  if (!handle) throw new Error("no handle");
  const drag = beginDrag(handle, development, shown, "Height", (beside) => said.push(beside));
  return { drag, pxOf: (mm) => -mm * drawn.scale * 10 };
}

beforeEach(() => {
  vi.stubGlobal("requestAnimationFrame", (run: () => void) => (run(), 0));
  replaceJob(pipeJob({ diameter: 100, length: 200, cuts: [planeCut({ angle: 30, direction: 90, height: 150 })] }));
});

describe("a drag", () => {
  it("changes the job as it goes, and is one step to undo", () => {
    const { drag, pxOf } = begin();
    drag.move({ x: 0, y: pxOf(-10) }, false);
    expect(height()).toBeCloseTo(140, 1);
    drag.move({ x: 0, y: pxOf(-20) }, false);
    drag.end();
    expect(height()).toBeCloseTo(130, 1);
    undo();
    expect(height()).toBe(150);
  });

  it("holds the board still until it ends", () => {
    const { drag, pxOf } = begin();
    expect(useInMotion.getState().held).toBeNull();
    drag.move({ x: 0, y: pxOf(-10) }, true);
    expect(useInMotion.getState().held).not.toBeNull();
    drag.end();
    expect(useInMotion.getState().held).toBeNull();
  });

  it("does nothing for a press that strays by a pixel or two", () => {
    const { drag } = begin();
    drag.move({ x: 2, y: 2 }, true);
    drag.end();
    expect(height()).toBe(150);
    expect(useInMotion.getState().held).toBeNull();
  });

  it("that is abandoned leaves the job as it was", () => {
    const { drag, pxOf } = begin();
    drag.move({ x: 0, y: pxOf(-33) }, true);
    drag.abandon();
    expect(height()).toBe(150);
    expect(useApp.getState().redo).toBeNull();
  });

  it("stays at the last good place, and says why", () => {
    const said: (Beside | null)[] = [];
    const { drag, pxOf } = begin(said);
    drag.move({ x: 0, y: pxOf(-20) }, false);
    drag.move({ x: 0, y: pxOf(-400) }, false);
    expect(height()).toBeCloseTo(130, 1);
    expect(said.at(-1)?.fault).toMatchObject({ kind: "problem", problem: { code: "nothing-left" } });
    expect(useApp.getState().drafts).toHaveProperty(["plane.height"]);
    drag.end();
    expect(useApp.getState().drafts).toEqual({});
    expect(height()).toBeCloseTo(130, 1);
  });

  it("works a job out once for moves that come to the same values", () => {
    const { drag, pxOf } = begin();
    drag.move({ x: 0, y: pxOf(-10) }, true);
    const { development } = useApp.getState();
    drag.move({ x: 1, y: pxOf(-10.01) }, true);
    expect(useApp.getState().development).toBe(development);
  });
});
