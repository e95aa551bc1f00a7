// @vitest-environment jsdom
import { act, cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test } from "vitest";
import { CheckMargin } from "../../../src/app/check/CheckMargin";
import { replaceJob } from "../../../src/app/store/changes";
import { set } from "../../../src/app/store/settings";
import { checkHelp } from "../../../src/app/words/help/check";
import { TRADE } from "../../../src/drawing/tradeWords";
import { hole, pipeWith, slant } from "../pipe";

const foot = { ...slant, id: "foot", end: "bottom", angle: 20, at: "low", height: 0 } as const;

beforeEach(() => {
  localStorage.clear();
  const job = pipeWith([slant, foot, hole]);
  replaceJob({ ...job, marking: { ...job.marking, items: [{ id: "a", text: "Views", marks: 3, by: "eye" }] } });
  set("explain", true);
  render(<CheckMargin />);
});
afterEach(() => {
  cleanup();
  set("explain", false);
});

test("every field of a check is explained, in one or two sentences in either words, and nothing else is", async () => {
  await userEvent.click(screen.getByRole("button", { name: /what is allowed/ }));
  const names = new Set([...document.querySelectorAll<HTMLElement>("[data-help]")].map((element) => element.dataset.help));
  expect([...names].filter((name) => name === undefined || !(name in checkHelp))).toEqual([]);
  expect(Object.keys(checkHelp).filter((name) => !names.has(name))).toEqual([]);
  const fields = document.querySelectorAll(".readings input, .check fieldset :is(input:not([type=file]), select, textarea)");
  expect(fields.length).toBeGreaterThan(40);
  expect([...fields].filter((one) => !one.closest("[data-help]")).map((one) => one.getAttribute("aria-label"))).toEqual([]);
  for (const said of Object.values(checkHelp)) for (const trade of Object.values(TRADE)) {
    const text = typeof said === "string" ? said : said(trade);
    expect(text).toMatch(/^[A-Z].*[.]$/);
    expect(text.length).toBeLessThanOrEqual(170);
  }
});

test("the field that has the focus is explained", () => {
  act(() => screen.getByRole("textbox", { name: "One space" }).focus());
  expect(screen.getByRole("complementary").textContent).toContain("One space between two stations");
});
