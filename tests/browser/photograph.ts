import type { BrowserContext } from "@playwright/test";
import type { Vec2 } from "../../src/core/index";
import { photographed, type Pinhole } from "../support/pinholeCamera";

// A photograph of a hand-drawn development, drawn in a page of its own as the camera would see it.

export interface Drawn {
  /** mm: the sheet of paper, from its lower left corner in the frame of the drawing. */
  readonly sheet: { readonly left: number; readonly bottom: number; readonly width: number; readonly height: number };
  /** Lines of the drawing, mm from the start of its base line. */
  readonly lines: readonly { readonly points: readonly Vec2[]; readonly width: number }[];
}

/** A straight line in short pieces, so that a lens may bend it. */
export function straight(a: Vec2, b: Vec2): Vec2[] {
  return Array.from({ length: 41 }, (_, i) => ({ x: a.x + (i / 40) * (b.x - a.x), y: a.y + (i / 40) * (b.y - a.y) }));
}

/** The drawing as a picture file. The page it is drawn in is closed again: one that lies behind another is drawn once a second. */
export async function photograph(context: BrowserContext, camera: Pinhole, { sheet, lines }: Drawn, type: "image/jpeg" | "image/png" | "image/webp" = "image/jpeg"): Promise<Buffer> {
  const { left, bottom, width, height } = sheet;
  const corners = [{ x: left, y: bottom }, { x: left + width, y: bottom }, { x: left + width, y: bottom + height }, { x: left, y: bottom + height }];
  const edge = corners.flatMap((corner, i) => straight(corner, corners[(i + 1) % 4]!));
  const pixels = { edge: edge.map((point) => photographed(camera, point)), lines: lines.map(({ points, width: pen }) => ({ pen: (pen * camera.focal) / camera.distance, points: points.map((point) => photographed(camera, point)) })) };
  const page = await context.newPage();
  const url = await page.evaluate(({ edge, lines, width, height, type }) => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [width, height];
    const context = canvas.getContext("2d")!;
    const path = (points: readonly Vec2[]) => {
      context.beginPath();
      for (const { x, y } of points) context.lineTo(x, y);
    };
    context.fillStyle = "#8a7a66";
    context.fillRect(0, 0, width, height);
    context.fillStyle = "#f1eee6";
    path(edge);
    context.fill();
    context.strokeStyle = "#3b3f45";
    for (const { points, pen } of lines) {
      context.lineWidth = pen;
      path(points);
      context.stroke();
    }
    return canvas.toDataURL(type, 0.9);
  }, { ...pixels, width: camera.width, height: camera.height, type });
  await page.close();
  return Buffer.from(url.slice(url.indexOf(",") + 1), "base64");
}
