import { z } from "zod";
import type { Shop } from "../shop.ts";
import { paper, paperFaults } from "./paper.ts";
import { quantity, wholeNumber } from "./quantity.ts";
import { record } from "./record.ts";
import { day, line, oneOf, word } from "./word.ts";

const id = word("the name that the shop calls it by");
const length = (about: string) =>
  quantity("length", about).refine((value) => value > 0 && value <= 20_000, {
    error: "more than 0 mm, up to 20 m",
  });
const rotation = oneOf(["ccw", "cw"], "which way the spindle turns, seen from above the work");
const moves = oneOf(["work", "tool"], "what moves: the work past the tool, or the tool over the work");
const speeds = z
  .array(wholeNumber(100, 60000, "revolutions a minute"), { error: "a list of speeds" })
  .min(1)
  .meta({ description: "the spindle speeds that can be set, rpm" });
const bed = (about: string) =>
  z.array(length("mm"), { error: "lengths along each axis" }).meta({ description: about });

const bandsaw = record({
  id,
  kind: z.literal("bandsaw"),
  throat: length("from the blade to the column"),
  height: length("the highest work under the guide"),
  tilt: z
    .tuple([quantity("angle"), quantity("angle")])
    .meta({ description: "how far the table tilts, least and most" }),
  blades: z.array(record({ width: length("of the blade"), kerf: length("as measured in scrap") })).min(1),
});
const shaper = record({
  id,
  kind: z.literal("shaper"),
  rotation,
  moves,
  speeds,
  spindle: length("spindle diameter"),
  "first-pass": length("the most that the machine's manual takes off at once").optional(),
  "collar-under": oneOf(["allowed", "no"], "whether this shop lets a collar run under the cutter"),
});
const router = record({
  id,
  kind: z.literal("router"),
  mount: oneOf(["table", "hand", "overhead"], "how it is held"),
  rotation,
  moves,
  speeds,
  collet: length("shank diameter that it takes"),
  base: length("diameter of a hand-held router's base").optional(),
});
const dxf = oneOf(["r12"], "r12 for an old controller: each drawing is written as DXF R12 too").optional();
const laser = record({
  id,
  kind: z.literal("laser"),
  dxf,
  bed: bed("x, y"),
  kerf: length("as measured"),
  thickest: length("sheet"),
});
const cnc = record({
  id,
  kind: z.literal("cnc-router"),
  dxf,
  rotation,
  moves,
  speeds,
  bed: bed("x, y, z"),
  collet: length("shank"),
});
const printer = record({
  id,
  kind: z.literal("printer"),
  bed: bed("x, y, z"),
  nozzle: length("nozzle diameter"),
  layer: length("layer height"),
  "hole-growth": length("added to the diameter of a hole, since holes come out small"),
});

/** A cutter or a guide is known by its measured diameter, with the day of measuring. */
const measured = { diameter: length("as measured"), measured: day("when it was measured") };
const cutter = record({
  id,
  fits: z.array(word("a machine")).min(1),
  ...measured,
  length: length("cutting length"),
  "most-speed": wholeNumber(100, 60000, "the speed marked on the tool, rpm").optional(),
  feed: oneOf(["manual", "mechanical"], "what the tool is marked for"),
});
const guide = record({
  id,
  kind: oneOf(["collar", "bearing", "bush", "pin"], "what rides on the template"),
  fits: z.array(word("a machine or a cutter")).min(1),
  ...measured,
  height: length("of the part that rides on the template"),
});

const machineKinds = "bandsaw, shaper, router, laser, cnc-router, printer";

const shop = record({
  shop: word("the shop's name, that of its file"),
  title: line("what it is, in one line"),
  units: oneOf(
    ["mm", "inch"],
    "inch: reports have lengths in inches beside mm, to the nearest 1/64",
  ).optional(),
  machines: z.array(
    z.discriminatedUnion("kind", [bandsaw, shaper, router, laser, cnc, printer], { error: machineKinds }),
    {
      error: "a list of machines",
    },
  ),
  cutters: z.array(cutter, { error: "a list of cutters" }),
  guides: z.array(guide, { error: "a list of guides" }),
  clamps: z.array(
    record({
      id,
      base: z.tuple([length("mm"), length("mm")]).meta({ description: "footprint" }),
      reach: length("from its base to the pad"),
      count: wholeNumber(1, 99, "how many"),
    }),
  ),
  stock: record({
    boards: z.array(
      record({
        id,
        wood: word("the wood"),
        length: length("along the grain"),
        width: length("across"),
        thickness: length("planed"),
      }),
    ),
    sheets: z.array(
      record({
        id,
        material: word("the material"),
        length: length("mm"),
        width: length("mm"),
        thickness: length("mm"),
      }),
    ),
  }),
  paper: z.array(paper, { error: "a list of papers" }).min(1, { error: "at least one paper" }),
});

/** What one workshop owns: each thing under a name of its own, cutters and guides for what is there. */
export const shopFile: z.ZodType<Shop> = shop.superRefine((shop, context) => {
  const fault = (path: PropertyKey[], input: string, allowed: string) => {
    context.addIssue({
      code: "custom",
      path,
      input,
      message: allowed,
      params: { code: "unknown-name", allowed },
    });
  };
  for (const { path, input, code, allowed, hint } of paperFaults(shop.paper))
    context.addIssue({ code: "custom", path, input, message: allowed, params: { code, allowed, hint } });
  const things = { machines: shop.machines, cutters: shop.cutters, guides: shop.guides, clamps: shop.clamps };
  const seen = new Set<string>();
  for (const [list, entries] of Object.entries(things)) {
    for (const [i, { id }] of entries.entries()) {
      if (seen.has(id)) fault([list, i, "id"], id, "a name that nothing else in this shop has");
      seen.add(id);
    }
  }
  const machines = shop.machines.map(({ id }) => id);
  const cutters = shop.cutters.map(({ id }) => id);
  for (const [list, entries, known] of [
    ["cutters", shop.cutters, machines],
    ["guides", shop.guides, [...machines, ...cutters]],
  ] as const) {
    for (const [i, { fits }] of entries.entries()) {
      for (const [k, name] of fits.entries())
        if (!known.includes(name)) fault([list, i, "fits", k], name, known.join(", "));
    }
  }
});
