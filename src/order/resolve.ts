import type { z } from "zod";
import { type Count, counts } from "./count.ts";
import { designForms } from "./design-forms.ts";
import { designProblems, ownName } from "./design-problems.ts";
import { knownFixtures } from "./known-fixtures.ts";
import type { FoundText, Library, Shelf } from "./library.ts";
import { didYouMean } from "./nearest.ts";
import { canBeOverruled } from "./overrule.ts";
import { type Checked, commandLine, type Position, type Problem, quoted } from "./problem.ts";
import { type ReadFile, readAs } from "./read.ts";
import { noReadings, type Readings } from "./readings.ts";
import { resolveFeatures, resolveFrets } from "./resolve-features.ts";
import { resolveFixtures } from "./resolve-fixtures.ts";
import { hardwareOf, hardwareProblems } from "./resolve-hardware.ts";
import { resolvePaper } from "./resolve-paper.ts";
import { resolveRecesses } from "./resolve-recesses.ts";
import { resolveRests } from "./resolve-rests.ts";
import { askedStrings, resolveStrings, stringPlaces } from "./resolve-strings.ts";
import { resolveValues, type Wish } from "./resolve-values.ts";
import { resolveVeneers } from "./resolve-veneers.ts";
import { densitiesOf, partWoodsOf, woodProblems } from "./resolve-woods.ts";
import { type DesignFile, designFile } from "./schema/design.ts";
import { type HardwareFile, hardwareFile } from "./schema/hardware-items.ts";
import { type OrderFile, orderFile } from "./schema/order.ts";
import { shopFile } from "./schema/shop.ts";
import { stringsFile } from "./schema/strings.ts";
import { type WoodsFile, woodsFile } from "./schema/woods.ts";
import type { Spec } from "./spec.ts";

/** What options put in place of an order's own words; texts as they were typed. */
export type Options = {
  readonly strings?: string | undefined;
  readonly hand?: string | undefined;
  readonly set?: readonly { readonly name: string; readonly text: string }[] | undefined;
};

/**
 * One order's text, with its design, shop and strings looked up in the library, as a spec.
 *
 * Every problem that can be told apart from others is returned, each with its position; nothing is thrown for anything that
 * a person can write. Whether the dimensions go together is not looked at here (instrument/contradictions.ts does).
 * Whoever resolves many orders gives readings that are kept, so that what they share is read once.
 */
export function resolve(
  text: string,
  file: string,
  library: Library,
  options: Options = {},
  readings: Readings = noReadings,
): Checked<Spec> {
  const order = readAs(orderFile, text, file);
  if (!order.ok) return order;
  const { data, written } = order.value;
  const load = <Schema extends z.ZodType>(schema: Schema, shelf: Shelf, name: string, key: string) => {
    const found = lookedUp(shelf, name, written.at([key]), library);
    if (!found.ok) return found;
    const { text: its, file: shown } = found.value;
    return readings.of(schema, its, shown, () => readAs(schema, its, shown));
  };
  const design = load(designFile, "designs", data.design, "design");
  const shop = load(shopFile, "shops", data.shop, "shop");
  const strings = load(stringsFile, "strings", "strings", "strings");
  const woods = load(woodsFile, "woods", "woods", "woods");
  const hardware = load(hardwareFile, "hardware", "hardware", "hardware");
  const loaded = [design, shop, strings, woods, hardware];
  const problems = loaded.flatMap((one) => (one.ok ? [] : one.problems));
  if (!design.ok || !shop.ok || !strings.ok || !woods.ok || !hardware.ok) return { ok: false, problems };
  return resolveRead(
    {
      ...{ order: order.value, design: design.value, shop: shop.value },
      ...{ strings: strings.value, woods: woods.value, hardware: hardware.value },
    },
    options,
  );
}

type Files = {
  readonly order: ReadFile<OrderFile>;
  readonly design: ReadFile<DesignFile>;
  readonly shop: ReadFile<Spec["shop"]>;
  readonly strings: ReadFile<z.output<typeof stringsFile>>;
  readonly woods: ReadFile<WoodsFile>;
  readonly hardware: ReadFile<HardwareFile>;
};

function resolveRead(files: Files, options: Options): Checked<Spec> {
  const { order, design, shop, strings, woods, hardware } = files;
  const problems: Problem[] = [...overruleProblems(order), ...designProblems(order.data, design)];
  problems.push(...ownName(order.data.shop, shop, shop.data.shop, "shop"));
  problems.push(...woodProblems(design, woods.data), ...hardwareProblems(design, hardware.data));
  const hand = options.hand ?? order.data.hand;
  if (hand !== "right" && hand !== "left") problems.push(optionProblem("hand", hand, "right, left"));
  const wanted = wantedStrings(order.data, options);
  const offered = counts.filter((count) => design.data.strings[count] !== undefined);
  const count = offered.find((n) => n === (Array.isArray(wanted) ? wanted.length : wanted));
  if (count === undefined) {
    problems.push(countProblem(order, options, offered));
    return { ok: false, problems };
  }
  const at = (index?: number): Position =>
    options.strings === undefined
      ? order.written.at(index === undefined ? ["strings"] : ["strings", index])
      : onLine();
  const asked = askedStrings(wanted, design.data.strings[count] ?? [], at);
  const found = resolveStrings(asked, strings.data[design.data.voice]);
  const frets = resolveFrets(order, design);
  const forms = designForms(design.data, frets.ok && frets.value !== null);
  const values = resolveValues(forms, design.written, count, wishesOf(order, options));
  const features = values.ok ? resolveFeatures(design, values.value) : values;
  const recesses = values.ok ? resolveRecesses(design, values.value, hardware.data) : values;
  const rests = values.ok ? resolveRests(design, values.value) : values;
  const named = knownFixtures({ build: design.data.build, values, features, recesses, rests });
  const fixtures = resolveFixtures(order, named, shop.data);
  const paper = resolvePaper(order, shop.data);
  const veneers = resolveVeneers(design);
  const inDesign = [...(values.ok ? [features, recesses, rests] : []), veneers];
  for (const part of [found, frets, values, ...inDesign, fixtures, paper])
    if (!part.ok) problems.push(...part.problems);
  if (problems.length > 0 || !found.ok || !frets.ok || !values.ok || !features.ok || !paper.ok)
    return { ok: false, problems: unique(problems) };
  if (!recesses.ok || !rests.ok || !fixtures.ok || !veneers.ok)
    return { ok: false, problems: unique(problems) };
  return {
    ok: true,
    value: {
      ...{ order: order.data.order, revision: order.data.revision ?? null },
      ...ofDesign(files),
      ...{ count, hand: hand as "right" | "left", strings: found.value, values: values.value },
      ...{ frets: frets.value, ...features.value, ...recesses.value, rests: rests.value.rests },
      veneers: veneers.value,
      ...{ shop: shop.data, fixtures: fixtures.value, paper: paper.value },
      places: {
        ...{ ...features.value.places, ...recesses.value.places, ...rests.value.places },
        ...stringPlaces(asked),
      },
      overrule: (order.data.overrule ?? []).map((entry, i) => ({
        ...entry,
        position: order.written.at(["overrule", i, "check"]),
      })),
    },
  };
}

/** What a spec takes from its design as it stands there. */
function ofDesign({ design: { data }, woods, hardware }: Files) {
  return {
    ...{ design: data.design, title: data.title, voice: data.voice, build: data.build },
    ...{ stations: data.stations, tuners: data.head.tuners, headFinish: data.head.finish ?? null },
    ...{ neckWoods: data.woods.neck, boardWoods: data.woods.fingerboard, partWoods: partWoodsOf(data) },
    ...{ densities: densitiesOf(data, woods.data), hardware: hardwareOf(data, hardware.data) },
  };
}

function lookedUp(shelf: Shelf, name: string, position: Position, library: Library): Checked<FoundText> {
  const found = library.find(shelf, name);
  if (found !== undefined) return found;
  const names = library.names(shelf);
  const word = shelf === "designs" || shelf === "shops" ? shelf.slice(0, -1) : shelf;
  const bare = name.replace(/\.ya?ml$/, "");
  const allowed = names.length === 0 ? `a file in ${shelf}/` : names.join(", ");
  const hint = names.includes(bare)
    ? `write ${bare}`
    : didYouMean(name, names, `put ${bare}.yaml into ${shelf}/`);
  return {
    ok: false,
    problems: [{ code: "unknown-name", position, name: word, found: quoted(name), allowed, hint }],
  };
}

function wantedStrings(order: OrderFile, options: Options): OrderFile["strings"] {
  if (options.strings === undefined) return order.strings;
  return /^\d+$/.test(options.strings) ? Number(options.strings) : Number.NaN;
}

function countProblem(order: ReadFile<OrderFile>, options: Options, offered: readonly Count[]): Problem {
  const { strings } = order.data;
  const given =
    options.strings ?? (typeof strings === "number" ? String(strings) : `a list of ${strings.length}`);
  return {
    code: "count",
    position: options.strings === undefined ? order.written.at(["strings"]) : onLine(),
    name: "strings",
    found: given,
    allowed: `design ${order.data.design} has ${offered.join(", ")} strings`,
    hint: "choose one of these counts, or another design",
  };
}

function wishesOf({ data, written }: ReadFile<OrderFile>, options: Options): Wish[] {
  const inFile = Object.entries(data.set ?? {}).map(([id, text]): Wish => {
    const [position, keyPosition] = [written.at(["set", id]), written.atKey(["set"], id)];
    return { id, text, source: "order", position, keyPosition };
  });
  const typed = (options.set ?? []).map(({ name, text }): Wish => {
    return { id: name, text, source: "command line", position: onLine(), keyPosition: onLine() };
  });
  return [...inFile, ...typed];
}

function overruleProblems({ data, written }: ReadFile<OrderFile>): Problem[] {
  return (data.overrule ?? []).flatMap(({ check }, i): Problem[] => {
    if (canBeOverruled(check)) return [];
    const position = written.at(["overrule", i, "check"]);
    const allowed = "a check that guards nobody's hands or eyes";
    const hint = "remove it, and change what the check refuses";
    return [
      {
        code: "overrule",
        position,
        name: "overrule",
        found: `${quoted(check)}, never overruled`,
        allowed,
        hint,
      },
    ];
  });
}

function optionProblem(name: string, text: string, allowed: string): Problem {
  return {
    code: "type",
    position: onLine(),
    name,
    found: quoted(text),
    allowed,
    hint: `--${name} takes ${allowed}`,
  };
}

function onLine(): Position {
  return { file: commandLine, line: 1, column: 1 };
}

function unique(problems: readonly Problem[]): Problem[] {
  return [...new Map(problems.map((problem) => [JSON.stringify(problem), problem])).values()];
}
