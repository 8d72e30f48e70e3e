import { z } from "zod";
import { designFile } from "./schema/design.ts";
import { orderFile, setForEditors } from "./schema/order.ts";
import { shopFile } from "./schema/shop.ts";
import { stringsFile } from "./schema/strings.ts";

type JsonSchema = { [key: string]: unknown };

/** The JSON Schemas of all files that a person writes, by name, made from what reads them. */
export function jsonSchemas(): { readonly [name: string]: JsonSchema } {
  const order = schemaOf(orderFile, "patternloft order");
  const set = schemaOf(setForEditors, "");
  const properties = order.properties as JsonSchema;
  properties.set = { description: (properties.set as JsonSchema).description, ...bare(set) };
  return {
    order,
    design: schemaOf(designFile, "patternloft design"),
    shop: schemaOf(shopFile, "patternloft shop"),
    strings: schemaOf(stringsFile, "patternloft strings"),
  };
}

function schemaOf(schema: z.ZodType, title: string): JsonSchema {
  return { title, ...(z.toJSONSchema(schema, { io: "input" }) as JsonSchema) };
}

function bare({ $schema: _, title: __, ...rest }: JsonSchema): JsonSchema {
  return rest;
}
