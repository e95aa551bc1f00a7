// The words of the pictorial view that rolls up, loaded with it.

export const rollUpWords = {
  title: "Roll up",
  view: "Pictorial view",
  picture: "The piece: arrow keys turn it, i sets it isometric",
  rolledUp: "Rolled up",
  percent: (whole: number) => `${whole} %`,
  play: "Roll up",
  pause: "Pause",
  layFlat: "Lay flat",
  turn: "Turn",
  turns: { left: "left", right: "right", up: "up", down: "down" },
  turnTo: (way: string) => `Turn ${way}`,
  isometric: "Isometric",
} as const;
