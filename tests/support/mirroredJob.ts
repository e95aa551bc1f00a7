import type { Cut, Job, Leg, Outline, Profile, Seam } from "./pipeJob";

/** The same pipe seen in a mirror that swaps left and right: direction d becomes -d, and everything drawn is turned over sideways. The face up changes too. */
export function mirroredJob(job: Job): Job {
  const { development, part } = job;
  return {
    ...job,
    part: { ...part, cuts: part.cuts.map(mirroredCut) },
    development: {
      ...development, seam: mirroredSeam(development.seam), extra: development.extra.map((direction) => -direction),
      face: development.face === "inside" ? "outside" : "inside",
    },
  };
}

function mirroredSeam(seam: Seam): Seam {
  if (seam.at === "angle") return { at: "angle", angle: -seam.angle };
  if (seam.at === "left" || seam.at === "right") return { at: seam.at === "left" ? "right" : "left" };
  return seam;
}

function mirroredCut(cut: Cut): Cut {
  const direction = -cut.direction;
  if (cut.kind === "plane") return { ...cut, direction };
  if (cut.kind === "shaped") return { ...cut, direction, profile: mirroredProfile(cut.profile) };
  return { ...cut, direction, offset: -cut.offset, outline: mirroredOutline(cut.outline) };
}

function mirroredOutline(outline: Outline): Outline {
  return outline.shape === "round" ? outline : { ...outline, turn: -outline.turn };
}

function mirroredProfile(profile: Profile): Profile {
  switch (profile.shape) {
    case "ogee": return { ...profile, rising: profile.rising === "left" ? "right" : "left" };
    case "step": return { ...profile, rising: profile.rising === "left" ? "right" : "left", position: -profile.position };
    case "free": return mirroredChain(profile);
    default: return { ...profile, centre: -profile.centre };
  }
}

/** Turned over and run backwards, so that it still goes from left to right; each arc then keeps its turn. */
function mirroredChain(profile: Extract<Profile, { shape: "free" }>): Profile {
  const flip = ({ x, z }: { x: number; z: number }): { x: number; z: number } => ({ x: -x, z });
  const places = [profile.start, ...profile.legs.map((leg) => leg.to)].map(flip).reverse();
  const legs = [...profile.legs].reverse().map((leg, index): Leg => {
    const to = places[index + 1]!;
    return "centre" in leg ? { ...leg, to, centre: flip(leg.centre) } : { ...leg, to };
  });
  return { shape: "free", start: places[0]!, legs };
}
