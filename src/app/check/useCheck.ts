import { useEffect, useMemo, useState } from "react";
import { diagnose, verdict, type Diagnosis, type Job, type Piece, type Verdict } from "../../core/index";
import { selectJob, selectPiece } from "../store/select";
import { useApp } from "../store/store";
import { emptySheet, type Sheet } from "./sheet";
import { pieceKey, useSheets } from "./sheets";
import { typedReadings, type TypedReadings } from "./typedReadings";

export interface Check extends TypedReadings {
  readonly job: Job;
  readonly piece: Piece;
  readonly sheet: Sheet;
  /** null as long as nothing is read. */
  readonly verdict: Verdict | null;
}

/** Milliseconds of rest after typing before the mistakes are tried. */
const rest = 250;

/** The check of the piece on the board, as typed so far; null without a piece. */
export function useCheck(): Check | null {
  const job = useApp(selectJob);
  const piece = useApp(selectPiece);
  const key = useMemo(() => pieceKey(job), [job]);
  const sheet = useSheets(({ all }) => all[key] ?? emptySheet);
  return useMemo(() => {
    if (!piece) return null;
    const typed = typedReadings(job, piece, sheet);
    return { job, piece, sheet, ...typed, verdict: typed.readings.values.length > 0 ? verdict(job, typed.readings, typed.rule) : null };
  }, [job, piece, sheet]);
}

/** What was probably done; null until it is known. */
export function useDiagnosis({ job, readings, rule, verdict: judged }: Check): Diagnosis | null {
  const [known, setKnown] = useState<{ readonly of: unknown; readonly diagnosis: Diagnosis } | null>(null);
  useEffect(() => {
    if (!judged) return;
    const stepped = rule.girth === "stepped" || (rule.girth === "either" && judged.girth === "stepped");
    const timer = setTimeout(() => setKnown({ of: readings, diagnosis: diagnose(job, readings, { tolerance: rule.tolerance, stepped }) }), rest);
    return () => clearTimeout(timer);
  }, [job, readings, rule, judged]);
  return known?.of === readings ? known.diagnosis : null;
}
