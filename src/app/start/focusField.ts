/** Takes a field of the description in hand as soon as it is drawn, ready to be typed over. */
export function focusField(selector: string): void {
  requestAnimationFrame(() => document.querySelector<HTMLElement>(`.description ${selector}`)?.focus());
}
