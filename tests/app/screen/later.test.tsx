// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import { act } from "react";
import { afterEach, beforeEach, expect, test } from "vitest";
import { afterTouch, later } from "../../../src/app/screen/later";
import { useTouch } from "../../../src/app/screen/touch";
import { say, useApp } from "../../../src/app/store/store";

const part = ({ text }: { text: string }) => <p>{text}</p>;

beforeEach(() => {
  say(null);
  useTouch.setState({ touched: false });
});
afterEach(cleanup);

test("later draws the part once it has been fetched", async () => {
  const Later = later(() => Promise.resolve(part));
  render(<Later text="here" />);
  await screen.findByText("here");
});

test("a part that cannot be fetched is said, and the rest of the page stays", async () => {
  const Later = later<{ text: string }>(() => Promise.reject(new Error("no network")));
  render(
    <>
      <p>the rest</p>
      <Later text="here" />
    </>,
  );
  await waitFor(() => expect(useApp.getState().message).toEqual({ kind: "not-fetched" }));
  expect(screen.getByText("the rest")).toBeTruthy();
});

test("afterTouch fetches nothing before the page is touched", async () => {
  let fetched = 0;
  const Later = afterTouch(() => {
    fetched++;
    return Promise.resolve(part);
  });
  render(<Later text="here" />);
  expect(fetched).toBe(0);
  act(() => useTouch.setState({ touched: true }));
  await screen.findByText("here");
  expect(fetched).toBe(1);
});
