import { angle, arrow, circle, line, place, size, thin, thinCircle, type HelpTable } from "../../help/helpRow";

// The fields of the clauses for the shop.

const wall = [thinCircle(0, 0, 42), thinCircle(0, 0, 58)];

/** A strip outside the top of the flat sheet, and one outside its first edge. */
const above = [thin(0, 150, 0, 182), thin(0, 182, 314, 182), thin(314, 182, 314, 150)];
const before = [thin(0, 150, -32, 150), thin(-32, 150, -32, 0), thin(-32, 0, 0, 0)];
const after = [thin(314, 150, 346, 150), thin(346, 150, 346, 0), thin(346, 0, 314, 0)];

export const shopHelp: HelpTable = {
  "shop.purpose": {
    says: "A sheet to be rolled into the pipe, or a template of paper or card to be wrapped round a pipe that is there.",
    sample: "plain", view: "top", marks: [circle(60), angle(0, 0, 74, 30, 100)],
  },
  "shop.diameter": { says: "The diameter of the pipe that is there, measured over its outside.", sample: "plain", view: "top", marks: [size(-50, 0, 50, 0, 76)] },
  "shop.paper": { says: "How thick the template itself is: it lies outside the pipe and so must reach a little farther round.", sample: "plain", view: "top", marks: [thinCircle(0, 0, 62), size(-62, 0, -50, 0)] },
  "shop.thickness": { says: "The number by which the sheet’s thickness is called in the table beside it.", sample: "plain", view: "top", marks: [...wall, size(-58, 0, -42, 0)] },
  "shop.gauge": { says: "The table the gauge is taken from. The same number is not the same thickness in another.", sample: "plain", view: "top", marks: [...wall, size(42, 0, 58, 0)] },
  "shop.kFactor": {
    says: ({ girth }) => `Where in the sheet the length stays as it was when it is bent: 0 at the inside, 0.5 in the middle. It gives the ${girth}.`,
    sample: "plain", view: "top", marks: [...wall, circle(50), size(42, 0, 50, 0)],
  },
  "shop.surface": { says: "On which side of the sheet the cuts have the heights you gave: a thick sheet is cut square through.", sample: "plain", view: "top", marks: [thinCircle(0, 0, 42), circle(58)] },
  "shop.seam.kind": { says: "How the two edges meet: end to end, one over the other, or hooked into one another.", sample: "plain", view: "pattern", marks: [line(0, 0, 0, 150), line(314.16, 0, 314.16, 150)] },
  "shop.seam.gap": { says: "The gap left for welding. Half of it is taken from each edge.", sample: "plain", view: "pattern", marks: [thin(22, 0, 22, 150), size(0, 75, 22, 75)] },
  "shop.seam.width": { says: "How wide the finished seam is. The sheet gets longer by what this kind of seam takes.", sample: "plain", view: "pattern", marks: [...before, size(-32, 75, 0, 75)] },
  "shop.seam.share": { says: "Which edge gets the sheet that the seam takes.", sample: "plain", view: "pattern", marks: [...before, ...after, place(-16, 75), place(330, 75)] },
  "shop.edges.end": { says: "The end whose edge is finished so.", sample: "plain", view: "pattern", marks: [line(0, 150, 314.16, 150)] },
  "shop.edges.kind": { says: "What the edge is made into: folded over once or twice, rolled round a wire, or turned out as a flange.", sample: "plain", view: "pattern", marks: [...above, line(0, 182, 314, 182)] },
  "shop.edges.width": { says: "How wide the hem or flange is when it is finished.", sample: "plain", view: "pattern", marks: [...above, size(157, 150, 157, 182)] },
  "shop.edges.wire": { says: "The diameter of the wire the edge is rolled round. The edge takes two and a half times that.", sample: "plain", view: "pattern", marks: [...above, place(157, 182), arrow(157, 215, 157, 188)] },
  "shop.edges.thickness": { says: "Some shops add the sheet’s thickness to what the wire takes.", sample: "plain", view: "pattern", marks: [...above, arrow(157, 222, 157, 184), arrow(157, 140, 157, 180)] },
  "shop.edges.slit": { says: "Whether the flange is slit, so that it can be turned on a round edge.", sample: "plain", view: "pattern", marks: [...above, ...[52, 104, 157, 209, 262].map((x) => line(x, 150, x, 182))] },
  "shop.edges.slits": { says: "How far it is from one slit of the flange to the next.", sample: "plain", view: "pattern", marks: [...above, thin(104, 150, 104, 182), thin(209, 150, 209, 182), size(104, 182, 209, 182, 22)] },
  "shop.plates.end": { says: "The end that a plate closes.", sample: "plain", view: "front", marks: [line(-50, 150, 50, 150)] },
  "shop.plates.fit": { says: "Whether the plate is as large as the outside, the middle or the inside of the wall.", sample: "plain", view: "top", marks: [...wall, circle(50)] },
  "shop.plates.gap": { says: "How much smaller the plate is all round.", sample: "plain", view: "top", marks: [circle(38), size(38, 0, 50, 0)] },
  "shop.density": { says: "What a cubic metre of the sheet weighs. It gives the weight of the piece.", sample: "plain", view: "front", marks: [arrow(0, 75, 0, -40), place(0, 75)] },
  "shop.quantity": { says: "How many pieces are made.", sample: "plain", view: "front", marks: [place(0, 75), thin(70, 0, 170, 0), thin(170, 0, 170, 150), thin(170, 150, 70, 150), thin(70, 150, 70, 0), place(120, 75)] },
  "shop.hand": {
    says: "As described, or its mirror image: a left-hand piece for a right-hand one.",
    sample: "plane", view: "front", marks: [thin(90, 0, 190, 0), thin(190, 0, 190, 150), thin(190, 150, 90, 80), thin(90, 80, 90, 0), line(70, -14, 70, 164)],
  },
};
