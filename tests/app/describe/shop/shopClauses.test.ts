import { describe, expect, it } from "vitest";
import { develop, type FabricationChoices, type Job } from "../../../../src/core/index";
import { shopAdded, shopOrder, shopRemoved } from "../../../../src/app/describe/shop/changeShop";
import { clauseId, keysOf, shopClauses } from "../../../../src/app/describe/shop/shopClauses";
import { sentenceText } from "../../../../src/app/describe/sentenceText";
import type { NumberToken, Token } from "../../../../src/app/describe/token";
import { developed, pipeWith, slant } from "../../pipe";

const none: ReadonlySet<string> = new Set();
const plain = pipeWith([slant]);
const made = (change: Partial<FabricationChoices>, part: Partial<Job["part"]> = {}): Job => {
  const job = pipeWith([slant], part);
  return { ...job, fabrication: { ...job.fabrication, ...change } };
};
const show = ({ value }: NumberToken) => String(value);
const read = (job: Job) => sentenceText(job, show);
const every: Job = shopOrder.reduce((job, word) => shopAdded(job, word).job, shopAdded(shopAdded(plain, "hem").job, "flange").job);
const fields = (job: Job, spelled = none) => shopClauses(job, spelled).flatMap(({ tokens }) => tokens.filter((token): token is Exclude<Token, { kind: "text" | "break" }> => "key" in token));

describe("shopClauses", () => {
  it("shopClauses of a plain pipe are none", () => {
    expect(shopClauses(plain, none)).toEqual([]);
  });

  it.each<[Partial<FabricationChoices>, string]>([
    [{ seam: { kind: "grooved", width: 6, share: 0.5 } }, "The seam is a grooved seam 6 wide when finished, half of it on each edge."],
    [{ seam: { kind: "lap", width: 10, share: 0.3 } }, "The seam is a single lap 10 wide, a share of 0.3 on the first edge."],
    [{ seam: { kind: "butt", gap: 2 } }, "The seam is a butt joint, its root gap 2."],
    [{ edges: { top: { kind: "hem", width: 6 }, bottom: { kind: "flange", width: 10, slits: 12 } } }, "Its top has a single hem 6 wide. Its bottom has a flange 10 wide, slit every 12."],
    [{ edges: { top: { kind: "wired", wire: 3, thickness: true }, bottom: { kind: "none" } } }, "Its top has a wired edge round wire of ⌀ 3, with the sheet’s thickness added."],
    [{ plates: { top: { fit: "inside", gap: 1 }, bottom: null } }, "A plate closes its top, made to the inside diameter less 1 all round."],
    [{ kFactor: 0.44 }, "The neutral line lies 0.44 of the thickness from the inside."],
    [{ surface: "clear" }, "The cuts’ heights are found on the outside or the inside, whichever keeps clear."],
    [{ density: 7900 }, "The sheet weighs 7900 kg/m³."],
    [{ quantity: 4, hand: "opposite" }, "Make 4, of the opposite hand."],
    [{ purpose: "wrap", paper: 0.2 }, "It is a template to wrap round a pipe measured ⌀ 90 outside, of a sheet 0.2 thick; outside up."],
  ])("shopClauses of %j are read in words", (change, sentence) => {
    expect(read(made(change))).toContain(sentence);
  });

  it("a gauge is read with its table, and none where the thickness is no gauge", () => {
    expect(read(made({ gauge: "us-standard" }, { thickness: 1.5875 }))).toContain("Its thickness is gauge 16 (0.0625 in) of the table US Standard.");
    expect(read(made({ gauge: "manufacturers-standard" }, { thickness: 1.5875 }))).toContain("Its thickness is gauge none of the table Manufacturers' Standard.");
  });

  it("sheet with a thickness is named by its material", () => {
    expect(read(made({ material: "galvanized" }, { thickness: 0.8 }))).toContain("Galvanized steel sheet 0.8 thick, marked out inside up.");
  });

  it("a clause asked for by its key is there though it says nothing of note", () => {
    expect(shopClauses(plain, new Set(keysOf("kFactor"))).map(({ id }) => id)).toEqual([clauseId("kFactor")]);
  });

  it("a pitch of slits of 0 is refused; that there are none is a choice", () => {
    const slit = made({ edges: { top: { kind: "flange", width: 1, slits: 12 }, bottom: { kind: "none" } } });
    const field = (job: Job, name: string) => fields(job).find(({ key }) => key === `fabrication.edges.top.${name}`)!;
    const pitch = field(slit, "slits");
    for (const typed of [0, 0.01, 1.9]) {
      const outcome = develop(pitch.kind === "number" && pitch.put(slit, typed));
      expect(outcome.ok ? "made" : outcome.problems, String(typed)).toMatchObject([{ code: "too-small", field: "fabrication.edges.top.slits", min: 2 }]);
    }
    const choice = field(slit, "slit");
    const without = choice.kind === "choice" ? choice.put(slit, "no") : slit;
    expect(read(without)).toContain("a flange 1 wide, not slit");
    const again = field(without, "slit");
    expect(read(again.kind === "choice" ? again.put(without, "yes") : without)).toContain("slit every 2.");
  });

  it("every field puts its own value back into the same job", () => {
    for (const token of fields(every)) expect(token.kind === "number" ? token.put(every, token.value) : token.put(every, token.value), token.key).toEqual(every);
  });

  it("every field but a choice of kind stands at its place in the job file", () => {
    for (const token of fields(every)) {
      if (token.kind === "number" && token.key !== "fabrication.density") expect(at(every, token.field), token.field).toBe(token.value);
    }
  });

  it("keys of the fields are all different", () => {
    const keys = fields(every).map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it("every option of every choice gives a job that can be developed", () => {
    for (const token of fields(made({ ...every.fabrication, purpose: "blank" }, { thickness: 1 }))) {
      if (token.kind !== "choice" || token.key === "fabrication.gauge.number") continue;
      for (const { value } of token.options) expect(developed(token.put(every, value)).pieces).toHaveLength(1);
    }
  });

  it("a gauge chosen is the thickness of its table, and another table keeps the number", () => {
    const [number, table] = shopClauses(made({ gauge: "us-standard" }, { thickness: 1 }), none).flatMap(({ tokens }) => tokens.filter((token) => token.kind === "choice"));
    // 16 of the US Standard is 1/16 in, of the Manufacturers' Standard 0.0598 in: 15 U.S.C. 206 and the standard's own table.
    const chosen = number!.put(made({ gauge: "us-standard" }, { thickness: 1 }), "16");
    expect(chosen.part.thickness).toBeCloseTo(25.4 / 16, 9);
    expect(table!.put(chosen, "manufacturers-standard").part.thickness).toBeCloseTo(0.0598 * 25.4, 9);
  });
});

describe("shopRemoved", () => {
  it.each(shopOrder)("shopRemoved takes back what adding %s did", (word) => {
    const { job, clause } = shopAdded(plain, word);
    // A sheet's thickness and the way a diameter is measured are the pipe's own and stay.
    expect(shopRemoved(job, clause).fabrication).toEqual(plain.fabrication);
  });
});

describe("shopAdded", () => {
  it("shopAdded puts a second edge on the other end", () => {
    expect(shopAdded(shopAdded(plain, "hem").job, "flange").job.fabrication.edges).toEqual({ top: { kind: "hem", width: 6 }, bottom: { kind: "flange", width: 10, slits: 0 } });
  });

  it("shopAdded of a template to wrap measures the pipe over its outside", () => {
    const { part } = shopAdded(made({}, { basis: "inside", thickness: 2 }), "wrap").job;
    expect(part).toMatchObject({ basis: "outside", diameter: 94 });
  });
});

function at(job: Job, field: string): unknown {
  return field.split(".").reduce<unknown>((value, name) => (value as Record<string, unknown>)[name], job);
}
