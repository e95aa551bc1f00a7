import { diagnose } from "../../core/index";
import type { DiagnosisAsked } from "./diagnoser";

// Tries the mistakes away from the page, so that typing never waits for it.

onmessage = ({ data: { job, readings, allowed } }: MessageEvent<DiagnosisAsked>) => {
  postMessage(diagnose(job, readings, allowed));
};
