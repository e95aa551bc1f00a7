// @vitest-environment jsdom
import { expect, test } from "vitest";
import { purposeIn, usePurpose } from "../../../src/app/store/purpose";

test("purposeIn reads the purpose at the beginning of an address", () => {
  expect(purposeIn("#teach")).toBe("teach");
  expect(purposeIn("#teach/carry?station=5")).toBe("teach");
  expect(purposeIn("#develop")).toBe("develop");
});

test("purposeIn finds none in an address that names a place or nothing", () => {
  for (const hash of ["", "#", "#description", "#teacher", "#x/teach"]) expect(purposeIn(hash)).toBeNull();
});

test("the purpose follows the address, but not to a place on the page", async () => {
  const go = async (hash: string) => {
    window.location.hash = hash;
    await new Promise((done) => setTimeout(done, 20));
  };
  expect(usePurpose.getState().purpose).toBe("develop");
  await go("#teach/carry");
  expect(usePurpose.getState().purpose).toBe("teach");
  await go("#description");
  expect(usePurpose.getState().purpose).toBe("teach");
  await go("#develop");
  expect(usePurpose.getState().purpose).toBe("develop");
});
