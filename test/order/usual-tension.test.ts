import { describe, expect, it } from "vitest";
import { stringsFile } from "../../src/order/schema/strings.ts";
import { specOf } from "../samples.ts";

describe("the usual tension of a string", () => {
  it("comes with the string of that name, and is left out where the trade knows none", () => {
    const { strings } = specOf("sedge", 6);
    const known = strings.map(({ usual }) => usual && [usual.least, usual.most, usual.mark]);
    expect(known).toEqual([
      ...[
        [70, 82, "G"],
        [50, 62, "G"],
        [40, 52, "G"],
      ],
      ...[
        [42, 50, "G"],
        [42, 60, "G"],
        [35, 50, "G"],
      ],
    ]);
    expect(specOf("mallow", 5).strings.map(({ usual }) => usual === null)).toEqual([
      ...[true, false, false, false, false],
    ]);
  });

  it("holds for the string's own pitch alone, whoever made it", () => {
    const listed = "[E5, { name: A4, pitch: Ab4 }, { name: D4, mass: 1.25 g/m }, G3]";
    expect(specOf("sedge", listed).strings.map(({ usual }) => usual?.least ?? null)).toEqual([
      ...[70, null, 40, 42],
    ]);
  });

  it("has a least under its most", () => {
    const file = (least: number, most: number) => {
      const size = { is: "1 mm", mark: "G" };
      const usual = { least: `${least} N`, most: `${most} N`, mark: "G" };
      const string = { name: "E5", pitch: "E5", diameter: size, mass: { is: "1 g/m", mark: "G" }, usual };
      return stringsFile.safeParse({ violin: [string], viola: [], cello: [] }).success;
    };
    expect([file(70, 82), file(82, 70), file(70, 70)]).toEqual([true, false, false]);
  });
});
