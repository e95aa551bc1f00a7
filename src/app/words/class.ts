// The words of a class set: own dimensions for every student.

export const classWords = {
  opened: "Open a student's piece",
  linkedPiece: (code: string) => `the piece ${code}`,
} as const;
