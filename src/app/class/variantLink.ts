// The address that opens a student's piece to check a drawing of it, on any device: "#check/5KQ2M-3F?of=…". The code is there to be read;
// the piece itself is what is packed.

export interface VariantAddress {
  readonly code: string;
  /** As packed. */
  readonly packed: string;
}

/** `place`: the address of the program, without a part after "#". */
export function writeVariantLink(place: string, { code, packed }: VariantAddress): string {
  return `${place}#check/${code}?of=${packed}`;
}

/** What an address asks for; null when it names no piece. */
export function readVariantLink(hash: string): VariantAddress | null {
  const [, code, packed] = /^#check\/([0-9A-Z-]{1,60})\?of=([\w-]+)$/.exec(hash) ?? [];
  return code === undefined || packed === undefined ? null : { code, packed };
}
