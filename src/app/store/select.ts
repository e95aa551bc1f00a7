import type { AppState } from "./store";

export const selectDevelopment = (state: AppState) => state.development;
export const selectJob = (state: AppState) => state.development.job;
export const selectUnits = (state: AppState) => state.development.job.units;
export const selectPiece = (state: AppState) => state.development.pieces[0];
export const selectSpelled = (state: AppState) => state.spelled;
export const selectMessage = (state: AppState) => state.message;
export const selectClause = (state: AppState) => state.clause;
export const selectHeld = (state: AppState) => state.held;

/** The station in hand: the one pointed at, else the one kept. */
export const selectStation = (state: AppState) => state.pointed ?? state.held;
