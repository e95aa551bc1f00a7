import { describe, expect, it } from "vitest";
import type { Item } from "../../../src/drawing/display";
import { stroke } from "../../../src/drawing/strokes";
import { svgDocument } from "../../../src/output/svg/svgDocument";

const box = { left: 0, right: 210, bottom: 0, top: 297 };
const text = (written: string): Item => ({ kind: "text", pen: "lettering", at: { x: 10, y: 20 }, text: written, height: 3.5, align: "middle", turn: Math.PI / 2 });

describe("svgDocument", () => {
  it("has the real size of the sheet in millimetres and one user unit a millimetre", () => {
    const svg = svgDocument([], { box, title: "sheet" });
    expect(svg).toContain('width="210mm" height="297mm" viewBox="0 -297 210 297"');
  });

  it("carries title and description", () => {
    expect(svgDocument([], { box, title: "Vent", desc: "A pipe." })).toContain("<title>Vent</title>\n<desc>A pipe.</desc>");
  });

  it("makes hostile titles and texts harmless", () => {
    const svg = svgDocument([text("</text><script>alert('x')</script>\u0000\ud800")], { box, title: "<script>&\"" });
    expect(svg).not.toContain("<script>");
    expect(svg).toContain("<title>&lt;script&gt;&amp;&quot;</title>");
    expect(svg).toContain("&lt;/text&gt;&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;\ufffd</text>");
  });

  it("draws lines with the pen's width and dashes, and says what they show", () => {
    const line = stroke("hidden edge", { x: 0, y: 0 }, { x: 10, y: 5 }, { clause: "cut:roof", station: 3 });
    expect(svgDocument([line], { box, title: "t" })).toContain(
      '<path class="pen-hidden-edge" fill="none" stroke="#000000" stroke-width="0.25" stroke-dasharray="3 0.75" stroke-linecap="butt" stroke-linejoin="round" data-clause="cut:roof" data-station="3" d="M0 0L10 -5"/>',
    );
  });

  it("turns text about its own place, anticlockwise on the sheet", () => {
    expect(svgDocument([text("7")], { box, title: "t" })).toContain('x="10" y="-20" font-size="4.6667" text-anchor="middle" transform="rotate(-90 10 -20)"');
  });

  it("shows a group through its window", () => {
    const group: Item = { kind: "group", move: { x: 5, y: 6 }, clip: { left: 10, right: 20, bottom: 30, top: 50 }, items: [text("7")] };
    const svg = svgDocument([group], { box, title: "t" });
    expect(svg).toContain('<clipPath id="clip-1"><rect x="10" y="-50" width="10" height="20"/></clipPath>');
    expect(svg).toContain('<g clip-path="url(#clip-1)"><g transform="translate(5 -6)">');
  });

  it("is black unless asked for hues", () => {
    const line = stroke("station in hand", { x: 0, y: 0 }, { x: 1, y: 0 });
    expect(svgDocument([line], { box, title: "t" })).toContain('stroke="#000000"');
    expect(svgDocument([line], { box, title: "t", colour: true })).toContain('stroke="#d55e00"');
  });
});
