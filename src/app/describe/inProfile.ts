import type { ShapedCut } from "../../core/index";

type Profile = ShapedCut["profile"];
type Of<S extends Profile["shape"]> = Extract<Profile, { shape: S }>;

/** Changes the profile of a shaped cut that still has this shape. */
export function inProfile<S extends Profile["shape"], V>(shape: S, change: (profile: Of<S>, value: V) => Profile) {
  return (cut: ShapedCut, value: V): ShapedCut => (cut.profile.shape === shape ? { ...cut, profile: change(cut.profile as Of<S>, value) } : cut);
}
