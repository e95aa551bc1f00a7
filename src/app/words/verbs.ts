/** The verbs of single clauses, fetched when the page is first touched. */
export const verbWords = {
  more: "more",
  ofStations: "Stations, more: add or remove one of your own",
  ofClause: (name: string) => `${name}, more: move, copy, switch off, remove`,
  addShop: "Add a seam, an edge, a plate",
  up: "Move up",
  down: "Move down",
  copy: "Copy",
  off: "Switch off",
  on: "Switch on",
  remove: "Remove",
  addLeg: "Add a leg",
  removeLeg: "Remove the last leg",
  addStation: "Add a station",
  removeStation: "Remove its last station",
} as const;
