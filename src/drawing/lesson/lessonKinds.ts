/** The kinds of school sheets, in the order in which they are offered. */
export const LESSON_KINDS = ["question", "started", "key", "stationTable", "steps", "card"] as const;
export type LessonKind = (typeof LESSON_KINDS)[number];
