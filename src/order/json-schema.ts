import { z } from "zod";
import { designFile } from "./schema/design.ts";
import { hardwareFile } from "./schema/hardware-items.ts";
import { orderForEditors } from "./schema/order.ts";
import { shopFile } from "./schema/shop.ts";
import { stringsFile } from "./schema/strings.ts";
import { woodsFile } from "./schema/woods.ts";

/** The JSON Schemas of all files that a person writes, by name, made from what reads them. */
export function jsonSchemas(): { readonly [name: string]: { readonly [key: string]: unknown } } {
  const schemas = {
    ...{ order: orderForEditors, design: designFile, shop: shopFile },
    ...{ strings: stringsFile, woods: woodsFile, hardware: hardwareFile },
  };
  return Object.fromEntries(
    Object.entries(schemas).map(([name, schema]) => [
      name,
      { title: `patternloft ${name}`, ...z.toJSONSchema(schema, { io: "input", reused: "ref" }) },
    ]),
  );
}
