import { useEffect, useMemo, useState } from "react";
import { verdict, type Diagnosis, type Job, type Piece, type Verdict } from "../../core/index";
import { sayNotFetched } from "../store/changing";
import { selectJob, selectPiece } from "../store/select";
import { useApp } from "../store/store";
import { createDiagnoser } from "./diagnoser";
import type { DiagnosisAsked } from "./diagnosisAsked";
import { emptySheet, type Sheet } from "./sheet";
import { sheetKey, useSheets } from "./sheets";
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
  const student = useSheets((sheets) => sheets.student);
  const key = useMemo(() => sheetKey(job, student), [job, student]);
  const sheet = useSheets(({ all }) => all[key] ?? emptySheet);
  return useMemo(() => {
    return piece ? checkOf(job, piece, sheet) : null;
  }, [job, piece, sheet]);
}

/** A sheet held against the true piece. */
export function checkOf(job: Job, piece: Piece, sheet: Sheet): Check {
  const typed = typedReadings(job, piece, sheet);
  return { job, piece, sheet, ...typed, verdict: typed.readings.values.length > 0 ? verdict(job, typed.readings, typed.rule) : null };
}

/** What was probably done; null until it is known. */
export function useDiagnosis(check: Check | null): Diagnosis | null {
  const [known, setKnown] = useState<{ readonly of: unknown; readonly diagnosis: Diagnosis } | null>(null);
  const [diagnoser] = useState(createDiagnoser);
  useEffect(() => {
    if (!check?.verdict) return;
    let over = false;
    const timer = setTimeout(() => {
      diagnoser.ask(diagnosisAsked(check, check.verdict)).then(
        (diagnosis) => !over && setKnown({ of: check, diagnosis }),
        sayNotFetched,
      );
    }, rest);
    return () => {
      over = true;
      clearTimeout(timer);
      diagnoser.stop();
    };
  }, [check, diagnoser]);
  return known?.of === check ? known.diagnosis : null;
}

/** What is to be explained; the girth stepped off with chords where the rule allows it and it was found so. */
export function diagnosisAsked({ job, readings, rule }: Pick<Check, "job" | "readings" | "rule">, judged: Verdict | null): DiagnosisAsked {
  const stepped = rule.girth === "stepped" || (rule.girth === "either" && judged?.girth === "stepped");
  return { job, readings, allowed: { tolerance: rule.tolerance, stepped } };
}
