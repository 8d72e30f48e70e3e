import { createHash } from "node:crypto";
import { expect, it } from "vitest";
import { kernelOnce } from "../../src/pack/kernel-once.ts";
import { type Pack, packOf } from "../../src/pack/pack.ts";
import { solidsHere } from "../../src/pack/solids/solids-here.ts";
import { compareReports } from "../../src/report/compare.ts";
import { memoryStore } from "../../src/step/store.ts";
import { frettedSpec, specOf } from "../samples.ts";

const means = { store: memoryStore(), solids: solidsHere(kernelOnce()), kept: new Map() };

/** Every file with a fingerprint, by that and by its bytes. */
function prints({ files }: Pack) {
  return new Map(
    files
      .filter(({ fingerprint }) => fingerprint !== null)
      .map(({ path, fingerprint, content }) => {
        return [path, { fingerprint, bytes: createHash("sha256").update(content).digest("hex") }] as const;
      }),
  );
}

/** The files of both packs that kept their fingerprint; none of them may have other bytes. */
function kept(before: Pack, after: Pack): string[] {
  const [a, b] = [prints(before), prints(after)];
  const names = [...a.keys()].filter((name) => a.get(name)!.fingerprint === b.get(name)?.fingerprint);
  for (const name of names) expect(b.get(name)!.bytes, name).toBe(a.get(name)!.bytes);
  return names;
}

/** What two lists of numbers differ in, by the test's own comparison. */
function moved(before: Pack, after: Pack): string[] {
  const values = ({ report }: Pack) => new Map(report.dimensions.map(({ id, value }) => [id, value]));
  const [a, b] = [values(before), values(after)];
  return [...new Set([...a.keys(), ...b.keys()])]
    .filter((id) => !(Math.abs(a.get(id)! - b.get(id)!) < 5e-7))
    .sort();
}

it("from four to seven strings on thrift, every number that moved is named, and nothing else", async () => {
  const four = await packOf(specOf("thrift", 4), means);
  for (const count of [5, 6, 7]) {
    const more = await packOf(specOf("thrift", count), means);
    const told = compareReports(four.report, more.report).dimensions.map(({ id }) => id);
    expect(told).toEqual(moved(four, more));
    for (const id of ["nut.width", "bridge.spread", "bridge.load", "neck.blank.width", "tailpiece.height"])
      expect(told).toContain(id);
    for (const id of ["string.length", "fingerboard.length", "core.depth", "afterlength"])
      expect(told).not.toContain(id);
    kept(four, more);
  }
});

it("another mass of one string changes plots and numbers, and no part", async () => {
  const strings = (mass: string) => `[E5, A4, D4, { name: G3, ${mass} }]`;
  const [light, heavy] = [
    await packOf(frettedSpec(strings("mass: 2.6 g/m")), means),
    await packOf(frettedSpec(strings("mass: 2.8 g/m")), means),
  ];
  const same = kept(light, heavy);
  const others = [...prints(light).keys()].filter((name) => !same.includes(name));
  expect(same.filter((name) => /\.(dxf|stl|3mf)$/.test(name)).length).toBeGreaterThan(20);
  // The traveller names the order by its fingerprint.
  expect(others.filter((name) => !/^(plots|bench\/traveller)/.test(name))).toEqual([]);
  expect(others).toContain("plots/tension.svg");
  expect(moved(light, heavy)).toContain("string.G3.tension");
  expect(moved(light, heavy)).not.toContain("string.D4.tension");
});
