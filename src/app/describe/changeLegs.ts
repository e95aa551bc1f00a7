import { inProfile } from "./inProfile";

/** The profile with its last leg parted in two at half its way. */
export const legAdded = inProfile("free", (q) => {
  const last = q.legs.at(-1);
  const before = q.legs.at(-2)?.to ?? q.start;
  if (!last) return { ...q, legs: [{ to: { x: -q.start.x, z: q.start.z } }] };
  const middle = { x: (before.x + last.to.x) / 2, z: (before.z + last.to.z) / 2 };
  return { ...q, legs: [...q.legs.slice(0, -1), { to: middle }, { to: last.to }] };
});

/** The profile without its last corner: its end stays where it was. */
export const legRemoved = inProfile("free", (q) => {
  const last = q.legs.at(-1);
  return q.legs.length < 2 || !last ? q : { ...q, legs: [...q.legs.slice(0, -2), { to: last.to }] };
});
