import type { Constraint, RangeFault } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import type { CodeFault } from "../class/codeFault";
import type { TableFault } from "../class/readTable";

// The words of a class set: own dimensions for every student.

const people = (count: number) => (count === 1 ? "1 student" : `${count} students`);

export const classWords = {
  title: "Own dimensions for every student",
  begin: "Tick what is to differ from student to student. What is not ticked stays as it is described.",
  from: " from ",
  to: " to ",
  by: " in steps of ",
  fromOf: (what: string) => `${what}, from`,
  toOf: (what: string) => `${what}, to`,
  stepOf: (what: string) => `${what}, step`,
  differs: (what: string, clause: string) => `${clause}: ${what}`,
  changed: "What differs",

  seams: "Seam at",
  hands: "Hand",
  handNames: { described: "as described", opposite: "opposite" },
  keeps: "Every piece must keep to this",
  inside: "Cuts go through their own end only; openings keep clear of ends and of each other",
  ordinate: "No ordinate is shorter than ",
  ordinateField: "Least ordinate",
  sheet: ({ pattern }: TradeWords) => `The ${pattern} fits, at full size, into `,
  sheetWidth: "Width of the room",
  sheetHeight: "Height of the room",
  times: " × ",

  another: "Other dimensions for all",
  counting: "Counting …",
  all: (count: number, ways: string) => `${count === 1 ? "One piece" : `${count} pieces`} that differ in their answers, of ${ways} ways to choose.`,
  atLeast: (count: number, ways: string) => `At least ${count} pieces that differ in their answers, of ${ways} ways to choose.`,
  tooFew: (found: number, wanted: number) => (found === 0 ? `No piece can be had; ${people(wanted)} need one each.` : `Only ${found} for ${people(wanted)}.`),
  tried: (count: number) => `Of ${count} tried:`,
  failed: (count: number, why: Constraint | "alike", { pattern }: TradeWords) => `${count} ${{
    makeable: "cannot be made", inside: "had a cut or an opening that does not stay in its place", ordinate: "had an ordinate too short",
    sheet: `had a ${pattern} too large for the room`, alike: "had the answers of another",
  }[why]}`,
  few: "The ranges give no more: widen one, or take smaller steps.",
  rangeFault: {
    "no-such-number": "The job has no such number any more.", "not-a-number": "This is not a number.", "no-step": "The step must be more than 0.",
    "upside-down": "“From” must not be more than “to”.", "too-many-values": "This makes more than 10 000 values: take a larger step.",
  } satisfies Record<RangeFault, string>,
  drop: "Leave it out",

  list: "The class",
  paste: "Names, one a line, pasted or typed; or columns copied from a spreadsheet",
  take: "Take these names",
  openList: "Open a list (CSV)",
  listFile: "Class list to open",
  forget: "Forget the list",
  onDevice: "The list stays on this device.",
  heads: "The first row names the columns",
  nameColumn: "Names in",
  secondColumn: "and in",
  groupColumn: "Class in",
  noColumn: "none",
  column: (index: number, example: string) => (example === "" ? `column ${index + 1}` : `${index + 1}: ${example.length > 18 ? `${example.slice(0, 17)}…` : example}`),
  students: people,
  without: "Without a list: ",
  withoutTail: " students, their names left open.",
  count: "Number of students",
  shared: (names: readonly string[]) => `In the list more than once: ${some(names)}. Each gets a sheet; the codes tell them apart.`,
  unprintable: (names: readonly string[]) => `The lettering of the sheets has no letters for: ${some(names)}. Question marks stand for them.`,
  listFault: (fault: TableFault): string => {
    switch (fault.kind) {
      case "empty": return "There is no name in this list.";
      case "not-text": return "This is no text. Save the list as CSV in the spreadsheet, then open that.";
      case "too-large": return "This is too large to be a class list.";
      case "too-many": return `This list has ${fault.found} rows; ${fault.most} can be taken. Divide it.`;
      case "quote": return `Line ${fault.line}: a quotation mark is not closed, or stands in the middle of a quoted text. Mend it, or leave the quotation marks out.`;
      case "too-long": return `Line ${fault.line}: more than ${fault.most} letters are no name.`;
    }
  },

  make: "Sheets",
  files: { question: "Questions (PDF)", started: "Questions begun (PDF)", key: "Keys (PDF)", answers: "Answers (CSV)" },
  asSheets: "Paper, scale, school and task are those chosen under Sheets.",
  qr: "A code on each sheet that opens its piece for checking",
  place: "Address of this program in it",
  placeHere: "This address is of this machine alone: on another device the code opens nothing. Type the address at which the class reaches the program.",
  placeFault: "This is no web address: write it as it stands above the page in the browser.",
  progress: { scale: (done: number, of: number) => `Finding a scale for all: ${done} of ${of}`, sheets: (done: number, of: number) => `Student ${done} of ${of}`, pieces: (done: number, of: number) => `Choosing dimensions: ${done} of ${of}` },
  cancel: "Cancel",
  failedSheet: (who: string) => `The sheet of ${who} cannot be made:`,
  failedAll: "The file could not be made; nothing of the job is lost. Try again.",
  noCode: "The address is too long for a code on paper: the sheets were made without it.",
  saved: (name: string) => `Saved: ${name}`,
  fileNames: { question: "questions", started: "questions begun", key: "keys", answers: "answers" },
  student: (number: number) => `student ${number}`,

  open: "Open a student's piece",
  code: "Code on the sheet",
  openCode: "Open",
  opened: "Open a student's piece",
  leave: "Back to the exercise",
  linkedPiece: (code: string) => `the piece ${code}`,
  codeFault: {
    "not-a-code": "This is no code: it looks like 5KQ2M-3F.", mistyped: "A letter of this code is wrong: look at the sheet again.",
    "another-exercise": "This code is of another exercise, or this one has been changed since the sheets were made.", "no-such-variant": "No sheet of this exercise has this code.",
  } satisfies Record<CodeFault, string>,
  table: { caption: "Who has which piece", number: "No.", who: "Name and code", code: "Code", open: "Open", link: "Copy link" },
  openOf: (who: string) => `Open the piece of ${who}`,
  linkOf: (who: string) => `Copy link to the piece of ${who}`,
  linkCopied: "Link copied",
  linkRefused: "The browser did not let the link be copied.",
  more: (count: number) => `and ${count} more`,

  csv: {
    number: "number", name: "name", group: "class", code: "code", girth: ({ along }: TradeWords) => `${along} mm`, spacing: "one space mm",
    top: (label: string) => `${label} mm`, end: (label: string, end: "bottom" | "top") => `${label} ${end} mm`, opening: (label: string, nth: number, end: "from" | "to") => `${label} opening${nth > 1 ? ` ${nth}` : ""} ${end} mm`,
    dimension: (clause: string, label: string, unit: string) => `${clause}, ${label.toLowerCase()}${unit}`,
  },
} as const;

/** The first of many. */
function some(names: readonly string[]): string {
  return `${names.slice(0, 6).join(", ")}${names.length > 6 ? ` and ${names.length - 6} more` : ""}`;
}
