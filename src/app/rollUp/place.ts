import { create } from "zustand";

/** CSS pixels across from which a board may have room. */
const wide = 960;

/**
 * Whether the board has room for the roll-up beside the drawing; if not, a verb opens it. Until the board has been measured, which is when
 * the page is first touched, a wide window is taken to have room.
 */
export const useRollUpPlace = create<{ readonly onBoard: boolean }>()(() => ({ onBoard: window.innerWidth >= wide }));
