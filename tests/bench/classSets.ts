import { classAnswers } from "../../src/app/class/classAnswers";
import { exercise, format, pupilsNamed, setOf, writtenSet } from "../support/classSet";

export const CLASS_FILES = ["question", "key", "answers"] as const;
export type ClassFile = (typeof CLASS_FILES)[number];

/** Students. */
export const CLASS_SIZES = [10, 20, 30] as const;

/** The bytes of a file of a class set, from the exercise to the last sheet. */
export async function classFile(kind: ClassFile, students: number): Promise<Uint8Array> {
  const pupils = pupilsNamed(Array.from({ length: students }, (_, i) => `Student ${i + 1}`));
  if (kind !== "answers") return writtenSet(setOf(pupils, kind));
  return new TextEncoder().encode((await classAnswers(pupils, exercise.exercise, format, () => Promise.resolve(true))) ?? "");
}
