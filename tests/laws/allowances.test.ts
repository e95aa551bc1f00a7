import { describe, expect, it } from "vitest";
import { develop, fabricate, flattenSegments, pathArea, pathLength, type Contour, type Fabrication, type FabricationChoices, type Job, type Piece, type Vec2 } from "../../src/core/index";
import { chainDistance } from "../support/chainDistance";
import { expectAllClose, expectClose } from "../support/approximate";
import { onEach, randomCases } from "../support/lawCase";

const COUNT = 60;

interface Made {
  readonly name: string;
  readonly job: Job;
  readonly piece: Piece;
  readonly fabrication: Fabrication;
}

/** What is asked of a piece. */
type Choices = (piece: Piece) => Partial<FabricationChoices>;

/** The random pipes that can be developed. */
const plain = randomCases(COUNT);

/** The same pipes with what was asked of each, kept for the next claim about the same choices. */
const madeWith = new Map<Choices, readonly Made[]>();

/** `check` is run on every random pipe with these choices. */
function onPipes(choices: Choices, check: (made: Made) => void): void {
  const pipes = madeWith.get(choices) ?? plain.map(({ name, job, piece }) => made(name, { ...job, fabrication: { ...job.fabrication, ...choices(piece) } }));
  madeWith.set(choices, pipes);
  onEach(pipes, check);
}

function made(name: string, job: Job): Made {
  const outcome = develop(job);
  if (!outcome.ok) throw new Error(`${name}: no longer developed`);
  return { name, job: outcome.development.job, piece: outcome.development.pieces[0]!, fabrication: fabricate(outcome.development) };
}

/** A seam, a hem and a flange in proportion to the pipe. */
function allRound({ form }: Piece): Partial<FabricationChoices> {
  const width = form.mean / 20;
  return { seam: { kind: "lap", width, share: 0.6 }, edges: { top: { kind: "hem", width: width / 2 }, bottom: { kind: "flange", width, slits: width * 2 } } };
}

const fine = (contour: Contour): Vec2[] => flattenSegments(contour.segments, 0.002);

/** Neither so many are refused that the laws say little, nor so few that refusing is not tried. */
it("random pipes take most of what is asked for", () => {
  let [asked, refused] = [0, 0];
  onPipes(allRound, ({ fabrication }) => {
    asked += 4;
    refused += fabrication.problems.length;
  });
  expect(refused).toBeLessThan(asked / 2);
});

describe("allowances round a random pipe", () => {
  it("give contours that close", () => onPipes(allRound, ({ fabrication }) => {
    for (const { segments } of fabrication.pieces[0]!.contours) {
      segments.forEach(({ from }, i) => {
        const { to } = segments.at(i - 1)!;
        expectClose(Math.hypot(to.x - from.x, to.y - from.y), 0, 1e-9, "gap");
      });
    }
  }));

  it("lie nowhere farther from the net edge than their width, and their rims exactly so far", () => onPipes(allRound, ({ fabrication }) => {
    const [piece] = fabrication.pieces;
    const widths = new Map(piece!.allowances.map(({ place, width }) => [place, width]));
    const net = piece!.net.map(({ segments }) => flattenSegments(segments, 0.001));
    for (const { segments } of piece!.contours) {
      segments.forEach((segment, i) => {
        if (!segment.allowance) return;
        const notch = segments.at(i - 1)!.allowance !== segment.allowance || segments[(i + 1) % segments.length]!.allowance !== segment.allowance;
        const width = widths.get(segment.allowance)!;
        for (const point of flattenSegments([segment], 0.01)) {
          const away = Math.min(...net.map((points) => chainDistance(points, point)));
          if (notch) expect(away).toBeLessThan(width + 0.02);
          else expectClose(away, width, 0.02, `distance of ${segment.allowance} at ${point.x}, ${point.y}`);
        }
      });
    }
  }));

  it("add to the area, and their sum is the area between cut line and net line", () => onPipes(allRound, ({ fabrication }) => {
    const { blank, contours, net } = fabrication.pieces[0]!;
    const area = (loops: readonly { readonly segments: Contour["segments"] | Piece["pattern"]["loops"][number]["segments"] }[]) => loops.reduce((sum, { segments }) => sum + pathArea(segments), 0);
    expectClose(blank.blankArea, area(contours), 1e-9 * blank.sheetArea);
    expectClose(blank.netArea, area(net), 1e-9 * blank.sheetArea);
    expect(blank.blankArea).toBeGreaterThanOrEqual(blank.netArea);
    expect(blank.blankArea).toBeLessThanOrEqual(blank.sheetArea * (1 + 1e-9));
  }));

  it("name the place where they cannot be made, on the pattern", () => onPipes((piece) => ({ ...allRound(piece), seam: { kind: "lap", width: piece.form.mean, share: 1 } }), ({ piece, fabrication }) => {
    for (const { field, detail } of fabrication.problems) {
      expect(field).toMatch(/^fabrication\.(seam\.width|edges\.(top|bottom)\.(width|wire))$/);
      expect(Number(detail!["girth"])).toBeGreaterThan(-2 * piece.pattern.girth);
      expect(Number.isFinite(Number(detail!["height"]))).toBe(true);
    }
  }));

  it("are not there unless asked for", () => onPipes(() => ({}), ({ piece, fabrication }) => {
    const { contours, allowances, blank } = fabrication.pieces[0]!;
    expect(allowances).toEqual([]);
    expectClose(blank.blankArea, piece.pattern.proof.areaFlat, 1e-6 * blank.sheetArea);
    expectClose(pathLength(contours.flatMap(({ segments }) => segments)), pathLength(piece.pattern.loops.flatMap(({ segments }) => segments)), 1e-4);
  }));

  it("make no numbers that are none", () => onPipes(allRound, ({ fabrication }) => {
    const bad: string[] = [];
    JSON.stringify({ ...fabrication, pieces: fabrication.pieces.map(({ piece: _, ...rest }) => rest) }, (key, value: unknown) => {
      if (typeof value === "number" && !Number.isFinite(value)) bad.push(key);
      return value;
    });
    expect(bad).toEqual([]);
  }));
});

describe("the opposite hand of a random pipe", () => {
  it("is its mirror image with the same area and the same face", () => {
    onPipes((piece) => ({ ...allRound(piece), seam: { kind: "butt", gap: 0 } }), ({ job, piece, fabrication }) => {
      const [one] = fabrication.pieces;
      const other = fabricate({ job: { ...job, fabrication: { ...job.fabrication, hand: "opposite" } }, pieces: [piece], notices: [] }).pieces[0]!;
      expectClose(other.blank.from.x, piece.pattern.girth - one!.blank.to.x, 0.02, "left end");
      expectClose(other.blank.to.x, piece.pattern.girth - one!.blank.from.x, 0.02, "right end");
      expectAllClose(other.contours.map(({ segments }) => pathArea(segments)), one!.contours.map(({ segments }) => pathArea(segments)), 1e-6 * one!.blank.sheetArea);
      const net = one!.net.map(({ segments }) => flattenSegments(segments, 0.001).map(({ x, y }) => ({ x: piece.pattern.girth - x, y })));
      for (const point of other.net.flatMap(({ segments }) => segments.map(({ from }) => from))) expectClose(Math.min(...net.map((points) => chainDistance(points, point))), 0, 0.002);
      expect(other.face).toBe(one!.face);
    });
  });
});

describe("a root gap", () => {
  it("takes half of itself off each edge of the seam", () => onPipes(({ form }) => ({ seam: { kind: "butt", gap: form.mean / 100 } }), ({ piece, fabrication }) => {
    const [one] = fabrication.pieces;
    if (fabrication.problems.length > 0) return;
    const gap = piece.form.mean / 100;
    for (const { x } of one!.contours.flatMap(fine)) {
      expect(x).toBeGreaterThanOrEqual(gap / 2 - 1e-6);
      expect(x).toBeLessThanOrEqual(piece.pattern.girth - gap / 2 + 1e-6);
    }
    const seam = one!.net.flatMap(({ segments }) => segments.filter(({ owner }) => owner.kind === "seam"));
    expectClose(piece.pattern.proof.areaFlat - one!.blank.netArea, (pathLength(seam) * gap) / 2, 0.1 * pathLength(seam) * gap + gap * gap * 40, "area taken off");
  }));
});
