import { expect, test } from "vitest";
import { EXAMPLES } from "../../../src/app/examples/index";
import { packJob, unpackJob } from "../../../src/app/teach/packedJob";
import { parseJob } from "../../../src/core/index";

async function packed(text: string): Promise<string> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return Buffer.from(await new Response(stream).arrayBuffer()).toString("base64url");
}

for (const { id, data } of EXAMPLES) {
  test(`the job ${id} comes back from its address, which is short and needs no escaping`, async () => {
    const parsed = parseJob(data);
    if (!parsed.ok) throw new Error(id);
    const text = await packJob(parsed.job);
    expect(text).toMatch(/^[\w-]{100,1500}$/);
    expect(await unpackJob(text)).toEqual(parsed.job);
  });
}

test("what is no job is refused: letters that are none, bytes that unpack to nothing, text that is no job", async () => {
  for (const text of ["", "!!!", "AAAA", await packed("no job"), await packed("{}")]) expect(await unpackJob(text)).toBeNull();
});

test("a small address that unpacks to more than a job file may hold is refused", async () => {
  const large = await packed(" ".repeat(5_000_000));
  expect(large.length).toBeLessThan(10_000);
  expect(await unpackJob(large)).toBeNull();
});
