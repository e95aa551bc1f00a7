import { useSettings } from "../store/settings";

// Which inks the page is drawn in: marks on the root element that the style sheets read.

const wantsContrast = window.matchMedia?.("(prefers-contrast: more)");

/** Marks the root with the theme chosen, and with high contrast when that is chosen or the device asks for it. */
function markTheme(): void {
  const { theme } = useSettings.getState();
  const { dataset } = document.documentElement;
  dataset.theme = theme;
  if (theme === "contrast" || wantsContrast?.matches) dataset.contrast = "more";
  else delete dataset.contrast;
}

/** Marks the root now, before the first paint, and whenever settings or device change. */
export function followTheme(): void {
  markTheme();
  useSettings.subscribe(markTheme);
  wantsContrast?.addEventListener("change", markTheme);
}
