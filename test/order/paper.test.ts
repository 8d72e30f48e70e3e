import { describe, expect, it } from "vitest";
import { fullSize } from "../../src/drawing/tiles/full-size.ts";
import { tilePlan } from "../../src/drawing/tiles/tile-plan.ts";
import { orderText, resolved, sampleText, specOf } from "../samples.ts";
import { toldProblems } from "./problems.ts";

const shop = sampleText("shops", "samphire.yaml");
const a4 = "{ id: A4, width: 210 mm, height: 297 mm, margin: 6 mm }";

/** The problems of a shop whose first paper is another. */
function problemsWith(paper: string) {
  expect(shop).toContain(a4);
  return toldProblems(resolved(orderText("sedge", 5), {}, { shops: { samphire: shop.replace(a4, paper) } }));
}

describe("the shop's paper", () => {
  it.each([
    [
      "{ id: A4, width: 210 mm, height: 297 mm, margin: 110 mm }",
      "paper.0.margin",
      "smaller than its margins",
    ],
    [
      "{ id: A5, width: 148 mm, height: 210 mm, margin: 6 mm }",
      "paper.0.margin",
      "leave 180 by 258 mm; A5 is too small",
    ],
    [
      "{ id: R, width: 150 mm, margin: 6 mm }",
      "paper.0.margin",
      "180 mm of the roll's width; R is too small",
    ],
    [
      "{ id: A4, width: 210 mm, height: 297 mm, margin: 6 mm, scale: [1.03, 1] }",
      "paper.0.scale.0",
      "wants mending",
    ],
    [
      "{ id: A4, width: 210 mm, height: 297 mm, margin: 6 mm, scale: [1, 0.979] }",
      "paper.0.scale.1",
      "wants mending",
    ],
    [
      "{ id: A4, width: 210 mm, height: 297 mm, margin: 6 mm, scale: [1] }",
      "paper.0.scale",
      "across and along",
    ],
    ["{ id: A3, width: 210 mm, height: 297 mm, margin: 6 mm }", "paper.1.id", "no other paper"],
  ])("%s is wrong at %s", (paper, name, allowed) => {
    const [problem, ...more] = problemsWith(paper);
    expect(more).toEqual([]);
    expect(problem).toMatchObject({ name, position: { file: "samphire.yaml" } });
    expect(problem!.allowed).toContain(allowed);
  });

  it("is the first, or the one that the order names", () => {
    expect(specOf("sedge", 5).paper.id).toBe("A4");
    expect(specOf("sedge", 5, "paper: roll-610\n").paper).toEqual({ id: "roll-610", width: 610, margin: 5 });
    expect(toldProblems(resolved(orderText("sedge", 5, "paper: Leter\n")))).toEqual([
      expect.objectContaining({ name: "paper", found: '"Leter"', hint: "did you mean Letter?" }),
    ]);
  });

  it("takes a drawing even when it is the smallest that is allowed, under the longest words", () => {
    const long = "W".repeat(40);
    const given = {
      flat: {
        shapes: [
          {
            layer: "PART",
            path: {
              closed: false,
              points: [
                { x: 0, y: 0, bulge: 0 },
                { x: 900, y: 500, bulge: 0 },
              ],
            },
          },
        ],
        notes: Array.from({ length: 9 }, () => ({
          text: `${long} ${long}`,
          x: 0,
          y: 0,
          height: 2.5,
          turn: 0,
          align: "left" as const,
        })),
      },
      title: {
        ...{
          order: long + long.slice(0, 24),
          name: long.slice(10),
          part: long.slice(20),
          fingerprint: "0123456789ab",
          hand: "right" as const,
        },
        ...{ seenFrom: "head's front", overruled: Array.from({ length: 9 }, () => `${long}: ${long}`) },
      },
      fromNumbers: { layers: /^BORE/, what: long.slice(10) },
      fewer: { paper: long, sheets: 12 },
    };
    for (const paper of [
      { id: "least", width: 192, height: 270, margin: 6 },
      { id: "least-roll", width: 192, margin: 6 },
    ]) {
      const { pages, plan } = fullSize({ ...given, paper });
      expect(pages.length).toBeGreaterThan(4);
      const { window, inside } = plan!;
      expect(window.maxY - window.minY).toBeGreaterThanOrEqual(106);
      expect(window.minY).toBeGreaterThan(inside.minY);
      const words = pages.map(({ groups }) =>
        groups.flatMap(({ marks }) => marks.texts.map(({ text }) => text)),
      );
      expect(words.at(-1)!.filter((text) => text.startsWith("WWWW")).length).toBeGreaterThanOrEqual(9);
      for (const own of words.slice(0, plan!.tiles.length)) {
        expect(own.join(" ")).toContain("READ THEM FIRST");
        expect(own.join(" ")).toContain("OVERRULED");
      }
    }
    expect(() =>
      tilePlan(
        { minX: 0, minY: 0, maxX: 1, maxY: 1 },
        { id: "A6", width: 105, height: 148, margin: 5 },
        () => 34,
      ),
    ).toThrow("A6");
  });
});
