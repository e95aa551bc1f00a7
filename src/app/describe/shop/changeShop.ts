import { defaultJob, roundPipe, type EdgeFinish, type End, type Job } from "../../../core/index";
import type { shopWords } from "../../words/shop";
import { asFinish } from "./edge";
import { gaugedBy, usualTable } from "./gauge";
import { asJoint } from "./joint";
import { newPlate } from "./plate";
import type { ShopClause } from "./shopClauses";

// The verbs of the clauses for the shop: each gives a new job.

export type ShopWord = keyof typeof shopWords.add;

/** The kinds of clause that can be added, in the order of the menu. */
export const shopOrder: readonly ShopWord[] = ["lap", "grooved", "gap", "hem", "double-hem", "wired", "flange", "plate", "gauge", "count", "surface", "neutral", "wrap", "density"];

export interface Added {
  readonly job: Job;
  readonly clause: ShopClause;
}

/** The job with this asked for, to begin with in a usual measure, and the clause that says so. An edge or plate goes on the end that has none yet, the top first. */
export function shopAdded(job: Job, word: ShopWord): Added {
  const { part, fabrication } = job;
  const shop = (change: Partial<Job["fabrication"]>): Job => ({ ...job, fabrication: { ...fabrication, ...change } });
  switch (word) {
    case "lap":
    case "grooved":
      return { job: shop({ seam: asJoint(fabrication.seam, word) }), clause: "seam" };
    case "gap":
      return { job: shop({ seam: { kind: "butt", gap: 2 } }), clause: "seam" };
    case "hem":
    case "double-hem":
    case "wired":
    case "flange": {
      const end = freeEnd((one) => fabrication.edges[one].kind === "none");
      return { job: shop({ edges: { ...fabrication.edges, [end]: asFinish(fabrication.edges[end], word) } }), clause: `edges.${end}` };
    }
    case "plate": {
      const end = freeEnd((one) => fabrication.plates[one] === null);
      return { job: shop({ plates: { ...fabrication.plates, [end]: fabrication.plates[end] ?? newPlate } }), clause: `plates.${end}` };
    }
    case "gauge":
      return { job: gaugedBy(job, fabrication.gauge ?? usualTable), clause: "gauge" };
    case "wrap":
      // Whoever wraps a template measures the pipe over its outside.
      return { job: { ...shop({ purpose: "wrap" }), part: { ...part, diameter: roundPipe(part).outside, basis: "outside" } }, clause: "purpose" };
    case "neutral":
      return { job, clause: "kFactor" };
    case "surface":
      return { job, clause: "surface" };
    case "density":
      return { job, clause: "density" };
    case "count":
      return { job, clause: "quantity" };
  }
}

/** The job as if the clause had never been added. */
export function shopRemoved(job: Job, clause: ShopClause): Job {
  const { fabrication: usual } = defaultJob();
  const shop = (change: Partial<Job["fabrication"]>): Job => ({ ...job, fabrication: { ...job.fabrication, ...change } });
  switch (clause) {
    case "purpose":
      return shop({ purpose: usual.purpose, paper: usual.paper });
    case "gauge":
      return shop({ gauge: null });
    case "kFactor":
      return shop({ kFactor: usual.kFactor });
    case "surface":
      return shop({ surface: usual.surface });
    case "seam":
      return shop({ seam: usual.seam });
    case "density":
      return shop({ density: null });
    case "quantity":
      return shop({ quantity: usual.quantity, hand: usual.hand });
    case "edges.top":
    case "edges.bottom":
      return shop({ edges: { ...job.fabrication.edges, [endOf(clause)]: { kind: "none" } satisfies EdgeFinish } });
    case "plates.top":
    case "plates.bottom":
      return shop({ plates: { ...job.fabrication.plates, [endOf(clause)]: null } });
  }
}

function freeEnd(free: (end: End) => boolean): End {
  return free("top") || !free("bottom") ? "top" : "bottom";
}

function endOf(clause: `${"edges" | "plates"}.${End}`): End {
  return clause.endsWith("top") ? "top" : "bottom";
}
