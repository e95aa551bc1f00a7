import { afterEach, expect, test, vi } from "vitest";
import { holdSlot } from "../../../src/app/store/openSlots";

// What the browser says of a slot that is asked for. (That locks do hold pages apart: tests/browser/tabs.spec.ts.)

afterEach(() => vi.unstubAllGlobals());

/** A browser that answers requests for locks so, one after the other; each error by its name, null for a lock given. */
function answering(...answers: (string | null)[]) {
  const request = vi.fn((_name: string, _options: object, hold: () => Promise<void>) => {
    const answer = answers.shift();
    return answer ? Promise.reject(new DOMException("", answer)) : hold();
  });
  vi.stubGlobal("navigator", { locks: { request } });
  return request;
}

test("a slot that is given is held until it is given back", async () => {
  const request = answering(null);
  const release = await holdSlot("a");
  let back = false;
  void (request.mock.results[0]?.value as Promise<void>).then(() => (back = true));
  await Promise.resolve();
  expect(back).toBe(false);
  release?.();
  await vi.waitFor(() => expect(back).toBe(true));
});

test("a slot waited for in vain is another page's", async () => {
  expect(await (answering("TimeoutError"), holdSlot("a"))).toBeNull();
});

test("a slot that the browser drops is asked for once more", async () => {
  const request = answering("UnknownError", null);
  expect(await holdSlot("a")).toBeTypeOf("function");
  expect(request).toHaveBeenCalledTimes(2);
});

test("a browser that refuses locks altogether cannot tell", async () => {
  const request = answering("SecurityError", "SecurityError");
  expect(await holdSlot("a")).toBeUndefined();
  expect(request).toHaveBeenCalledTimes(2);
});

test("nor can one without locks", async () => {
  vi.stubGlobal("navigator", {});
  expect(await holdSlot("a")).toBeUndefined();
});
