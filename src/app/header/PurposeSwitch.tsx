import { purposes, usePurpose } from "../store/purpose";
import { words } from "../words/interface";

/** The purposes side by side, in words; each is an address. */
export function PurposeSwitch() {
  const now = usePurpose((state) => state.purpose);
  return (
    <nav className="purposes" aria-label={words.purposes.label}>
      {purposes.map((one) => (
        <a key={one} className="purpose" href={`#${one}`} aria-current={one === now ? "page" : undefined}>
          {words.purposes[one]}
        </a>
      ))}
    </nav>
  );
}
