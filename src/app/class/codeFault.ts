import type { variantOfCode } from "../../core/index";

/** Why a code opens no piece. */
export type CodeFault = Extract<ReturnType<typeof variantOfCode>, { ok: false }>["reason"];
