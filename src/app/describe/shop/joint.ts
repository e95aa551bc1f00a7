import type { Job, SeamJoint } from "../../../core/index";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type NumberToken, type Token } from "../token";
import { inShop, shopChoice, shopNumber } from "./shopField";

type Shared = Exclude<SeamJoint, { kind: "butt" }>;

/** The key under which a share is asked for in figures. */
const shareKey = "fabrication.seam.share";

/** "The seam is [a grooved seam] [6] wide when finished, [half of it on each edge]." */
export function jointTokens({ fabrication: { seam } }: Job, spelled: ReadonlySet<string>): Token[] {
  const { fields } = shopWords;
  const kind = shopChoice("seam.kind", fields.joint, seam.kind, optionsOf(shopWords.joint), (f, value) => ({ ...f, seam: asJoint(f.seam, value as SeamJoint["kind"]) }), "butt");
  if (seam.kind === "butt") {
    const gap = shopNumber("seam.gap", "length", fields.gap, seam.gap, (f, value) => (f.seam.kind === "butt" ? { ...f, seam: { ...f.seam, gap: value } } : f));
    return [text("The seam is "), kind, text(", its root gap "), gap, text(".")];
  }
  const grooved = seam.kind === "grooved";
  const width = shopNumber("seam.width", "length", grooved ? fields.groovedWidth : fields.lapWidth, seam.width, (f, value) => ({ ...f, seam: shared(f.seam, { width: value }) }));
  return [text("The seam is "), kind, text(" "), width, text(grooved ? " wide when finished, " : " wide, "), ...shareTokens(seam, spelled), text(".")];
}

function shareTokens({ share }: Shared, spelled: ReadonlySet<string>): Token[] {
  const { fields } = shopWords;
  const named = String(share) in shopWords.share && !spelled.has(shareKey);
  const put = inShop<number>((f, value) => ({ ...f, seam: shared(f.seam, { share: value }) }));
  const choice: Token = {
    kind: "choice",
    key: `${shareKey}.side`,
    field: shareKey,
    label: fields.share,
    value: named ? String(share) : "part",
    // In the order of the words, not of the figures.
    options: ([1, 0.5, 0, "part"] as const).map((value) => ({ value: String(value), label: shopWords.share[value] })),
    put: (job, value) => (value === "part" ? job : put(job, Number(value))),
    spells: "part",
  };
  if (named) return [choice];
  const figure: NumberToken = { kind: "number", key: shareKey, field: shareKey, quantity: "ratio", label: fields.shareFigure, value: share, put };
  return [choice, text(" of "), figure, text(" on the first edge")];
}

function shared(seam: SeamJoint, change: Partial<Pick<Shared, "width" | "share">>): SeamJoint {
  return seam.kind === "butt" ? seam : { ...seam, ...change };
}

/** The seam with another joint: a width that was typed is kept, a new one is a usual one. */
export function asJoint(old: SeamJoint, kind: SeamJoint["kind"]): SeamJoint {
  if (kind === old.kind) return old;
  if (kind === "butt") return { kind, gap: 0 };
  return { kind, width: old.kind === "butt" ? { lap: 10, grooved: 6 }[kind] : old.width, share: kind === "lap" ? 1 : 0.5 };
}
