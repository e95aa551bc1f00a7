import type { Diagnosis } from "../../core/index";
import type { DiagnosisAsked } from "./diagnosisAsked";

// Asks a worker what was probably done. Where none can be started it is worked out here, after the page has been drawn.

export interface Diagnoser {
  /** The diagnosis; one still being worked out is given up, and its promise never settles. Rejects when it cannot be worked out. */
  ask(asked: DiagnosisAsked): Promise<Diagnosis>;
  /** Gives up what is being worked out. */
  stop(): void;
}

/** A diagnoser with a worker of its own, started with the first question. */
export function createDiagnoser(): Diagnoser {
  let worker: Worker | null = null;
  let busy = false;
  let cannot = typeof Worker !== "function";

  const stop = () => {
    if (!busy) return;
    worker?.terminate();
    worker = null;
    busy = false;
  };
  const ask = (asked: DiagnosisAsked): Promise<Diagnosis> => {
    stop();
    if (cannot) return askHere(asked);
    const own = (worker ??= new Worker(new URL("./diagnosis.worker.ts", import.meta.url), { type: "module" }));
    busy = true;
    return new Promise((resolve, reject) => {
      own.onmessage = ({ data }: MessageEvent<Diagnosis>) => {
        busy = false;
        resolve(data);
      };
      own.onerror = () => {
        stop();
        cannot = true;
        askHere(asked).then(resolve, reject);
      };
      own.postMessage(asked);
    });
  };
  return { ask, stop };
}

async function askHere(asked: DiagnosisAsked): Promise<Diagnosis> {
  const { diagnosedHere } = await import("./diagnosedHere");
  return diagnosedHere(asked);
}
