import { diagnosedHere } from "./diagnosedHere";
import type { DiagnosisAsked } from "./diagnosisAsked";

// Tries the mistakes away from the page, so that typing never waits for it.

onmessage = ({ data }: MessageEvent<DiagnosisAsked>) => {
  postMessage(diagnosedHere(data));
};
