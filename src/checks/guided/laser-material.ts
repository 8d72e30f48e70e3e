import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** What is never put under a laser, by how a sheet's material is named (S); polycarbonate as thick as a template. */
const never = /pvc|vinyl|chlor|\babs\b|polycarbonate|fib(re|er)glass|glass-fib|carbon|treated/;

/** Whether the sheet of a template may be cut by the laser, where the shop has one that cuts so thick. Found: 1 where it may not. */
export const laserMaterial: FixtureRule<Pick<Fixture, "sheet">> = {
  name: "laser.material",
  of: ({ sheet }, { shop }) => {
    const usual = {
      ...({ stake: "injury", unit: "", limit: 0 } as const),
      source: "published lists of what is never lasered; unknown plywood may hide voids of glue",
    };
    if (sheet?.kind !== "ok") return untried(usual, "stock");
    const each = sheet.thickness / (sheet.layers ?? 1);
    const laser = shop.machines.find((one) => one.kind === "laser" && one.thickest >= each);
    const { material } = sheet;
    const passed = { ...usual, status: "pass", found: 0 } as const;
    if (laser === undefined)
      return { ...passed, why: `no laser of this shop cuts ${sheet.sheet}, ${plain(each)} mm thick` };
    if (never.test(material))
      return {
        ...{ ...usual, status: "refuse", found: 1 },
        why: `${material} is never lasered, and ${laser.id} cuts so thick: take MDF, or plywood whose glue is known, and keep ${sheet.sheet} away from the laser`,
      };
    if (material === "plywood")
      return {
        ...{ ...usual, status: "attend", found: 0 },
        why: `nothing says what plywood ${sheet.sheet} is: it may hide voids of glue that burn on ${laser.id}; ask its maker, and name it so`,
      };
    return { ...passed, why: `${material} may be cut on ${laser.id}` };
  },
};
