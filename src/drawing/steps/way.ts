/** By hand: set-squares and chords stepped with the dividers. On the screen: any number of stations, and π × diameter. */
export type Way = "hand" | "screen";
