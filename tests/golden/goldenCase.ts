/** A drawing that is kept and compared. */
export interface GoldenCase {
  readonly name: string;
  readonly draw: () => string;
}
