import { useEffect } from "react";
import { openLinked } from "./openVariant";

/** Opens the piece that the address names, now and whenever another is followed. */
export function useVariantAddress(): void {
  useEffect(() => {
    const follow = () => void openLinked(window.location.hash);
    follow();
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
}
