import { useState } from "react";

/** A place in the picture in pixels; the arrow keys move it by one, with Shift by ten. Text that is no number stays until the field is left. */
export function PixelField({ label, value, change }: { label: string; value: number | undefined; change: (value: number) => void }) {
  const [typed, setTyped] = useState<string | null>(null);
  const shown = typed ?? (value === undefined ? "" : String(Math.round(value * 10) / 10));
  return (
    <input
      className="reading" inputMode="decimal" autoComplete="off" aria-label={label} aria-invalid={typed !== null && read(typed) === null ? true : undefined} value={shown}
      onChange={(event) => {
        setTyped(event.target.value);
        const number = read(event.target.value);
        if (number !== null) change(number);
      }}
      onFocus={(event) => event.target.select()}
      onBlur={() => setTyped(null)}
      onKeyDown={(event) => {
        const way = event.key === "ArrowUp" ? 1 : event.key === "ArrowDown" ? -1 : 0;
        if (way === 0 || value === undefined) return;
        event.preventDefault();
        setTyped(null);
        change(value + way * (event.shiftKey ? 10 : 1));
      }}
    />
  );
}

function read(text: string): number | null {
  const number = Number(text.trim().replace(",", "."));
  return text.trim() === "" || !Number.isFinite(number) ? null : number;
}
