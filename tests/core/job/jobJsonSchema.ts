import { type ConversionConfig, toJsonSchema } from "@valibot/to-json-schema";
import { jobSchema, LEG_KINDS, legSchema } from "../../../src/core/job/schema";

// The JSON Schema of a job file, as published in public/job.schema.json, from the schema the core checks with.

const LEG = { anyOf: LEG_KINDS.map((kind) => convert(kind)) };

/** What a file may hold: fields with a default are not required. Checks between fields are not in it. */
export function jobJsonSchema(): object {
  const { $schema, ...rest } = toJsonSchema(jobSchema, { typeMode: "input", overrideSchema: legKinds });
  return {
    $schema,
    title: "Flatwright job",
    description: "A cut pipe and how to develop it. Lengths in mm, angles in degrees. See docs/job-format.md.",
    ...rest,
  };
}

/** The core picks the kind of leg by looking at it; in JSON Schema it is any of the kinds. */
const legKinds: NonNullable<ConversionConfig["overrideSchema"]> = ({ valibotSchema }) =>
  (valibotSchema as unknown) === legSchema ? LEG : undefined;

function convert(kind: (typeof LEG_KINDS)[number]): object {
  const { $schema: _, ...rest } = toJsonSchema(kind, { typeMode: "input" });
  return rest;
}
