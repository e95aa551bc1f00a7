import { create } from "zustand";

/** The panels that open over the page, one at a time. */
export type PanelName = "earlier" | "examples" | "marking-list" | "photo" | "print" | "roll-up" | "settings";

export const usePanel = create<{ readonly open: PanelName | null }>()(() => ({ open: null }));

export function openPanel(name: PanelName): void {
  usePanel.setState({ open: name });
}

export function closePanel(): void {
  usePanel.setState({ open: null });
}
