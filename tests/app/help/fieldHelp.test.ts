import { describe, expect, test } from "vitest";
import type { Development, Job, Leg } from "../../../src/core/index";
import { cutWords } from "../../../src/app/describe/cutWords";
import { describe as clausesOf } from "../../../src/app/describe/describe";
import { newCut } from "../../../src/app/describe/newCut";
import { shopAdded, shopOrder } from "../../../src/app/describe/shop/changeShop";
import { shopClauses } from "../../../src/app/describe/shop/shopClauses";
import { shopKey } from "../../../src/app/describe/shop/shopField";
import { helpName } from "../../../src/app/help/helpName";
import { sampleJob, type SampleName } from "../../../src/app/help/samples";
import { FIELD_HELP } from "../../../src/app/words/help/fieldHelp";
import { boundsOf } from "../../../src/drawing/bounds";
import { miniature } from "../../../src/drawing/miniature/miniature";
import { PENS } from "../../../src/drawing/pens";
import { TRADE, type TradeWords } from "../../../src/drawing/tradeWords";
import { developed, pipeWith } from "../pipe";

const legs: Leg[] = [{ to: { x: -20, z: 180 } }, { to: { x: 20, z: 180 }, radius: 40, turn: "right", long: false }, { to: { x: 60, z: 150 }, centre: { x: 40, z: 150 }, turn: "left" }];

/** Jobs that between them have every field there is: each kind of cut, directions in figures, every kind of leg, an ogee of a radius, a seam and a station of one's own. */
function jobs(): Job[] {
  const all = pipeWith(cutWords.map((word) => newCut(pipeWith([]), word)));
  const free = pipeWith([{ id: "end", on: true, kind: "shaped", end: "top", direction: 95, profile: { shape: "free", start: { x: -60, z: 150 }, legs } }]);
  const ogee = pipeWith([{ id: "end", on: true, kind: "shaped", end: "top", direction: 0, profile: { shape: "ogee", low: 140, high: 200, rising: "left", radius: 60 } }]);
  return [all, free, ogee, { ...all, development: { ...all.development, seam: { at: "angle", angle: 30 }, extra: [15, 40] } }];
}

/** What the shop can add, one job a verb, with every clause in sight; a share and slits in figures. */
function shopJobs(): Job[] {
  const added = shopOrder.map((word) => shopAdded(pipeWith([]), word).job);
  const { fabrication } = pipeWith([]);
  const figures: Job = { ...pipeWith([]), fabrication: { ...fabrication, seam: { kind: "lap", width: 10, share: 0.3 }, edges: { top: { kind: "flange", width: 10, slits: 12 }, bottom: { kind: "none" } } } };
  return [...added, figures];
}

const everyKey = new Set(["purpose", "gauge", "kFactor", "surface", "seam", "edges.top", "edges.bottom", "plates.top", "plates.bottom", "density", "quantity", "hand"].map(shopKey));

const clauses = [...jobs().flatMap((job) => clausesOf(job)), ...shopJobs().flatMap((job) => shopClauses(job, everyKey))];
const names = new Set(clauses.flatMap(({ kind, tokens }) => tokens.flatMap((token) => ("key" in token ? [helpName(kind, token.field)] : []))));

test("every field of every kind of clause is explained, and nothing else", () => {
  expect(names.size).toBeGreaterThan(50);
  expect([...names].filter((name) => !FIELD_HELP[name])).toEqual([]);
  expect(Object.keys(FIELD_HELP).filter((name) => !names.has(name))).toEqual([]);
});

const developments = new Map<SampleName, Development>();
function developedSample(name: SampleName): Development {
  const development = developments.get(name) ?? developed(sampleJob(name));
  developments.set(name, development);
  return development;
}

describe.each(Object.entries(FIELD_HELP))("the help of %s", (_, row) => {
  test("is one or two sentences in either words, fit for a margin", () => {
    for (const trade of Object.values<TradeWords>(TRADE)) {
      const said = typeof row.says === "string" ? row.says : row.says(trade);
      expect(said).toMatch(/^[A-Z].*[.]$/);
      expect(said.split(/[.:] /).length).toBeLessThanOrEqual(4);
      expect(said.length).toBeLessThanOrEqual(170);
      expect(said).not.toMatch(/\ba [aeio]|undefined/);
    }
  });

  test("shows a piece that can be made, with something marked on it, all inside its window", () => {
    const items = miniature(developedSample(row.sample), row, 42, 35);
    const marked = items.filter((item) => "pen" in item && PENS[item.pen].role === "in hand");
    expect(marked).not.toHaveLength(0);
    const { left, right, bottom, top } = boundsOf(marked);
    for (const [value, limit] of [[left, 42], [right, 42], [bottom, 35], [top, 35]] as const) expect(value >= 0 && value <= limit, String(value)).toBe(true);
  });
});

test("no two fields of one kind of clause show the same drawing", () => {
  const seen = new Map<string, string>();
  for (const [name, { sample, view, marks }] of Object.entries(FIELD_HELP)) {
    const drawing = `${name.split(".")[0]} ${JSON.stringify([sample, view, marks])}`;
    expect(seen.get(drawing), name).toBeUndefined();
    seen.set(drawing, name);
  }
});
