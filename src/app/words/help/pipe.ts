import { angle, arrow, circle, line, place, size, thin, thinCircle, type HelpTable } from "../../help/helpRow";

// The fields of the pipe, its sheet, its seam and its stations.

const quarters = [0, 30, 60, 90, 120, 150, 180, 210, 240, 270, 300, 330].map((degrees) => (degrees * Math.PI) / 180);

export const pipeHelp: HelpTable = {
  "body.diameter": {
    says: "How wide the pipe is across. The next field says which diameter this is.",
    sample: "plain", view: "front", marks: [size(-50, 0, 50, 0, -22)],
  },
  "body.basis": {
    says: ({ girth }) => `Over the outside, over the inside, or at the middle of the sheet. The ${girth} follows from the middle one: outside less, inside plus one thickness.`,
    sample: "plain", view: "top", marks: [thinCircle(0, 0, 41), thinCircle(0, 0, 59), size(-59, 0, 59, 0, 76), size(-41, 0, 41, 0, 0)],
  },
  "body.length": {
    says: "How long the pipe is before anything is cut off. All heights are measured from its base.",
    sample: "plain", view: "front", marks: [size(-50, 0, -50, 150, 22)],
  },
  "body.attitude": {
    says: "Drawn standing on its base, or lying: tipped over to the right, so that its top end points right.",
    sample: "plain", view: "front", marks: [angle(50, 0, 110, 85, 15)],
  },
  "sheet.thickness": {
    says: ({ girth }) => `How thick the sheet is; 0 when it does not matter. The ${girth} is π times the diameter at the middle of the sheet.`,
    sample: "plain", view: "top", marks: [thinCircle(0, 0, 42), thinCircle(0, 0, 58), size(-58, 0, -42, 0, 0)],
  },
  "sheet.face": {
    says: ({ pattern }) => `Which side of the sheet looks up when you mark it out. The other way round the ${pattern} is its mirror image.`,
    sample: "plain", view: "top", marks: [arrow(0, 0, 34, 34), arrow(74, 74, 37, 37)],
  },
  "seam.seam.at": {
    says: ({ element }) => `Where the sheet meets itself. The shortest ${element} gives the shortest seam.`,
    sample: "plane", view: "pattern", marks: [line(0, 0, 0, 80), line(314.16, 0, 314.16, 80)],
  },
  "seam.seam.angle": {
    says: "Where the seam stands: degrees from the front, anticlockwise seen from above.",
    sample: "plain", view: "top", marks: [thin(0, 0, 0, -72), angle(0, 0, 66, -90, 20), thin(0, 0, 67, 24), place(47, 17)],
  },
  "stations.stations": {
    says: ({ girth, element }) => `Into how many equal parts the ${girth} is divided. At each station the true length of the ${element} is measured.`,
    sample: "plain", view: "top", marks: quarters.map((at) => place(50 * Math.cos(at), 50 * Math.sin(at))),
  },
  "stations.critical": {
    says: "Stations in equal steps only, or more of them where the edge turns, begins or ends.",
    sample: "vee", view: "front", marks: [place(0, 95), place(-50, 145), place(50, 145)],
  },
  "stations.extra": {
    says: "One station more, where you want it: degrees from the front, anticlockwise seen from above.",
    sample: "plain", view: "top", marks: [thin(0, 0, 0, -72), angle(0, 0, 66, -90, -40), thin(0, 0, 52, -44), place(38, -32), circle(50)],
  },
};
