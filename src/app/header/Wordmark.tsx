/** A pipe cut aslant, laid flat: the mark of the program. */
export function Wordmark() {
  return (
    <svg className="mark" viewBox="0 0 28 20" width="28" height="20" aria-hidden="true">
      <path d="M1 19V12C6 12 8 2 14 2s8 10 13 10v7Z" />
      <path className="fine" d="M5.3 19v-8.3M9.6 19V6.2M14 19V2M18.4 19V6.2M22.7 19v-8.3" />
    </svg>
  );
}
