import { placeAlong } from "../../geometry/path-measures/place-along.ts";
import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { type FixtureRule, untried } from "./fixture-check.ts";

/** Whether the shop has a sheet that the template comes out of. Found: the blank's length, or the thickness wanted, mm. */
export const fixtureStock: FixtureRule<Pick<Fixture, "sheet">> = {
  name: "stock",
  of: ({ sheet }) => {
    const usual = {
      stake: "spoilage",
      unit: "mm",
      limit: 0,
      source: "the shop's sheets; 12 thick or more: published guidance",
    } as const;
    if (sheet === null) return untried(usual, "edge.none");
    if (sheet.kind === "ok")
      return {
        ...usual,
        status: "pass",
        found: sheet.length,
        limit: sheet.length,
        why: `out of ${sheet.sheet}, ${plain(sheet.length)} by ${plain(sheet.width)} mm`,
      };
    const why =
      sheet.kind === "too-thin"
        ? `no plywood or MDF of ${plain(sheet.least)} mm or more in stock: add a sheet`
        : `no sheet of ${plain(sheet.length)} by ${plain(sheet.width)} mm in stock: add one, or join two`;
    return { ...usual, status: "refuse", found: sheet.kind === "too-thin" ? sheet.least : sheet.length, why };
  },
};

/** How much of the edge is cut against the grain. Found: its length, mm; limit: what would be if the work were turned over. */
export const grainAgainst: FixtureRule = {
  name: "grain.against",
  of: (fixture) => {
    const { grain } = fixture;
    const usual = {
      stake: "spoilage",
      unit: "mm",
      limit: 0,
      source: "general trade knowledge, angles 2 and 60: default, confirm",
    } as const;
    if (grain === null) return untried(usual, "edge.none");
    const { against, with: turned } = grain;
    const worse = against > turned + 1;
    const cut = `${plain(against)} mm are cut against the grain${whereAgainst(fixture)}`;
    return {
      ...{ ...usual, status: worse ? "attend" : "pass", found: against, limit: turned },
      why: worse
        ? `${cut}, turned over on a mirrored fixture only ${plain(turned)} would be: take light cuts there, or leave 6 mm and trim later where it will split`
        : `${cut}, turned over ${plain(turned)} would be: light cuts there`,
    };
  },
};

/** Where an edge is cut against the grain: the beginning of each stretch along it, and how long that is; nothing where none is half a millimetre. */
function whereAgainst({ run, stretches }: Fixture): string {
  const told = (stretches ?? []).flatMap(({ grain, from, to }) => {
    const place = placeAlong(run.path, from);
    if (grain !== "against" || to - from < 0.5 || place.kind !== "ok") return [];
    return [`from ${plain(place.point.x)}, ${plain(place.point.y)} over ${plain(to - from)}`];
  });
  return told.length === 0 ? "" : ` (${told.join("; ")})`;
}
