// Writes the JSON Schemas beside the sample files; a test holds them to what is generated.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { jsonSchemas } from "../src/order/json-schema.ts";

for (const [name, schema] of Object.entries(jsonSchemas())) {
  const file = join(import.meta.dirname, "..", "models", "schemas", `${name}.json`);
  writeFileSync(file, `${JSON.stringify(schema, undefined, 2)}\n`);
}
