import { LIMITS, type EdgeFinish, type End, type FabricationChoices, type Job } from "../../../core/index";
import type { PlaceWords } from "../../words/clauses";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type NumberToken, type Token } from "../token";
import { shopChoice, shopNumber } from "./shopField";

type Kind = EdgeFinish["kind"];
type Of<K extends Kind> = Extract<EdgeFinish, { kind: K }>;

/** "Its [top] has [a flange] [10] wide, [slit every] [12]." */
export function edgeTokens({ fabrication }: Job, end: End, place: PlaceWords): Token[] {
  const finish = fabrication.edges[end];
  const { fields } = shopWords;
  return [
    text("Its "),
    shopChoice(`edges.${end}.end`, fields.end, end, optionsOf(place.end), (f, value) => (value === end ? f : { ...f, edges: { top: f.edges.bottom, bottom: f.edges.top } })),
    text(" has "),
    shopChoice(`edges.${end}.kind`, fields.finish, finish.kind, optionsOf(shopWords.finish), (f, value) => inEdge(f, end, (old) => asFinish(old, value as Kind)), "none"),
    ...measures(finish, end),
    text("."),
  ];
}

function measures(finish: EdgeFinish, end: End): Token[] {
  const { fields } = shopWords;
  const width = (label: string): NumberToken => shopNumber(`edges.${end}.width`, "length", label, "width" in finish ? finish.width : 0, (f, value) => inEdge(f, end, (old) => ("width" in old ? { ...old, width: value } : old)));
  switch (finish.kind) {
    case "none":
      return [];
    case "hem":
    case "double-hem":
      return [text(" "), width(fields.hem), text(" wide")];
    case "wired":
      return [
        text(" round wire of ⌀ "),
        shopNumber(`edges.${end}.wire`, "length", fields.wire, finish.wire, (f, wire) => inEdge(f, end, (old) => (old.kind === "wired" ? { ...old, wire } : old))),
        text(", "),
        shopChoice(`edges.${end}.thickness`, fields.thickness, finish.thickness ? "yes" : "no", optionsOf(shopWords.wired), (f, value) => inEdge(f, end, (old) => (old.kind === "wired" ? { ...old, thickness: value === "yes" } : old))),
      ];
    case "flange":
      return [text(" "), width(fields.flange), text(" wide, "), ...slitTokens(finish, end)];
  }
}

function slitTokens({ slits }: Of<"flange">, end: End): Token[] {
  const { fields } = shopWords;
  const put = (f: FabricationChoices, pitch: (old: Of<"flange">) => number) => inEdge(f, end, (old) => (old.kind === "flange" ? { ...old, slits: pitch(old) } : old));
  const usual = (old: Of<"flange">) => old.slits || Math.max(old.width, LIMITS.slits.min);
  const choice = shopChoice(`edges.${end}.slit`, fields.slit, slits > 0 ? "yes" : "no", optionsOf(shopWords.slits), (f, value) => put(f, value === "yes" ? usual : () => 0));
  // That there are none is said by the choice: a pitch of 0 is typed too small like any other.
  const pitch = shopNumber(`edges.${end}.slits`, "length", fields.slits, slits, (f, value) => put(f, () => value || Number.MIN_VALUE));
  return slits > 0 ? [choice, text(" "), pitch] : [choice];
}

function inEdge(f: FabricationChoices, end: End, change: (finish: EdgeFinish) => EdgeFinish): FabricationChoices {
  return { ...f, edges: { ...f.edges, [end]: change(f.edges[end]) } };
}

/** The edge finished otherwise: a width that was typed is kept, a new one is a usual one. */
export function asFinish(old: EdgeFinish, kind: Kind): EdgeFinish {
  if (kind === old.kind) return old;
  const width = "width" in old ? old.width : kind === "flange" ? 10 : 6;
  switch (kind) {
    case "none":
      return { kind };
    case "hem":
    case "double-hem":
      return { kind, width };
    case "wired":
      return { kind, wire: 3, thickness: false };
    case "flange":
      return { kind, width, slits: 0 };
  }
}
