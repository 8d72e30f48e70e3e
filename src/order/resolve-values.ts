import { catalogue, settables } from "./catalogue.ts";
import type { Count } from "./count.ts";
import { followsFrom } from "./derived.ts";
import type { DesignForm } from "./design-forms.ts";
import { didYouMean } from "./nearest.ts";
import { type Checked, type Position, type Problem, quoted } from "./problem.ts";
import { quantityText, readQuantity } from "./quantity.ts";
import type { WrittenDimension } from "./schema/dimension.ts";
import type { Reference } from "./schema/measure.ts";
import type { Feature, Settable } from "./settable.ts";
import type { Source, SpecValue } from "./spec.ts";
import type { Written } from "./yaml.ts";

/** A value that somebody wants in place of the design's. */
export type Wish = {
  readonly id: string;
  readonly text: string;
  readonly source: Source;
  readonly position: Position;
  readonly keyPosition: Position;
};

type Values = { readonly [id: string]: SpecValue };

/**
 * Every settable dimension of a design at one string count, with what the order and the options put in its place.
 *
 * A later wish for the same dimension wins. References are worked out after the wishes, so what follows a changed dimension
 * moves with it. Problems: a name that is unknown or derived, a value that can't be read or is out of the design's range, a
 * reference that leads back to itself, a design without a value for this count, a wish for what this instrument doesn't have.
 */
export function resolveValues(
  forms: ReadonlyMap<string, DesignForm>,
  written: Written,
  count: Count,
  wishes: readonly Wish[],
): Checked<Values> {
  const problems: Problem[] = [];
  const wished = new Map<string, { value: number; wish: Wish }>();
  for (const wish of wishes) {
    const read = readWish(wish, forms);
    if (read.ok) wished.set(wish.id, { value: read.value, wish });
    else problems.push(...read.problems);
  }
  const settled = settleAll({ forms, written, count, wished });
  problems.push(...settled.problems, ...Object.values(settled.values).flatMap(outOfRange));
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: settled.values };
}

type Wished = ReadonlyMap<string, { readonly value: number; readonly wish: Wish }>;
type Given = {
  readonly forms: ReadonlyMap<string, DesignForm>;
  readonly written: Written;
  readonly count: Count;
  readonly wished: Wished;
};

/** Every dimension's value, each after those that it refers to, and what stood in the way. */
function settleAll({ forms, written, count, wished }: Given) {
  const values: { [id: string]: SpecValue } = {};
  const problems: Problem[] = [];
  const settle = (entry: Settable, waiting: readonly string[]): number | undefined => {
    const { id } = entry;
    if (values[id] !== undefined) return values[id].value;
    const { form, path } = forms.get(id)!;
    const position = written.at([...path, "value"]);
    if (waiting.includes(id)) {
      problems.push(circle(id, [...waiting, id], position));
      return undefined;
    }
    const own = wished.get(id)?.value ?? atCount(form.value, count);
    const value = isReference(own) ? follow(own, [...waiting, id]) : own;
    const [least, most] = [atCount(form.least, count), atCount(form.most, count)];
    if (value === undefined || least === undefined || most === undefined) {
      if (!problems.some(({ name }) => name === id)) problems.push(noValue(id, count, position));
      return undefined;
    }
    problems.push(...beyondSense(entry, { least, most }, written, path));
    values[id] = {
      ...{ id, kind: entry.kind, value, least, most, tolerance: form.tolerance, purpose: form.for },
      ...{
        follows: isReference(own) ? referred(own) : null,
        ...origin(form, wished.get(id)?.wish, position),
      },
    };
    return value;
  };
  const follow = (reference: Reference, waiting: readonly string[]): number | undefined => {
    const name = referred(reference);
    const entry = settables.get(name);
    if (entry === undefined || !forms.has(name)) {
      const id = waiting.at(-1)!;
      problems.push(unknown(id, name, written.at([...forms.get(id)!.path, "value"])));
      return undefined;
    }
    const whole = settle(entry, waiting);
    if (whole === undefined || "dim" in reference) return whole;
    return whole * reference.part + (reference.plus ?? 0);
  };
  for (const entry of catalogue) if (forms.has(entry.id)) settle(entry, []);
  return { values, problems };
}

function referred(reference: Reference): string {
  return "dim" in reference ? reference.dim : reference.of;
}

/** Who decided a value, and where it stands. */
function origin(
  form: WrittenDimension,
  wish: Wish | undefined,
  position: Position,
): Pick<SpecValue, "source" | "position"> {
  if (wish !== undefined) return { source: wish.source, position: wish.position };
  return { source: isPerCount(form.value) ? "string count" : "design", position };
}

function isReference(value: unknown): value is Reference {
  return typeof value === "object" && value !== null && ("dim" in value || "part" in value);
}

function isPerCount<T>(value: T | { [count in Count]?: T | undefined }): value is { [count in Count]?: T } {
  return typeof value === "object" && value !== null && !isReference(value);
}

function atCount<T extends number | Reference>(
  value: T | { [count in Count]?: T | undefined },
  count: Count,
) {
  return isPerCount(value) ? value[count] : (value as T);
}

function readWish(
  { id, text, position, keyPosition }: Wish,
  forms: ReadonlyMap<string, DesignForm>,
): Checked<number> {
  const entry = settables.get(id);
  if (entry === undefined) {
    const from = followsFrom(id);
    if (from === undefined) return { ok: false, problems: [unknown(id, id, keyPosition)] };
    const what = { code: "derived", position: keyPosition, name: id, found: "a derived dimension" } as const;
    const hint = `${id} follows from ${from.join(", ")}: change one of these`;
    return { ok: false, problems: [{ ...what, allowed: "a dimension that can be set", hint }] };
  }
  if (!forms.has(id)) return { ok: false, problems: [notHere(entry, keyPosition)] };
  const read = readQuantity(text, entry.kind);
  if (read.ok) return read;
  const found = text === "" ? "nothing" : quoted(text);
  return {
    ok: false,
    problems: [{ code: read.code, position, name: id, found, allowed: read.allowed, hint: read.hint }],
  };
}

const wanted: { readonly [feature in Feature]: string } = {
  frets: "ask for frets in the order, where the design offers them",
  dots: "add dots to the design",
  "side-dots": "add side-dots to the design",
  inlays: "add inlays to the design",
  cradle: "give the design's bridge a cradle as its foot",
  saddle: "give the design's bridge a saddle as its foot",
  wings: "choose a winged design",
  body: "choose a design whose body is in one piece",
  "body-recess": "give the design's body a recess for the core",
  recesses: "add recesses to the design",
  "body-corners": "give the design's body four corners",
  "chin-rest": "give the design a chin rest",
  "chin-clamp": "give the design's chin rest a clamp",
  "chin-screws": "give the design's chin rest screws",
  "shoulder-mounts": "give the design mounts for a shoulder rest",
  "knee-mounts": "give the design mounts for knee rests",
  endpin: "give the design an endpin",
};

/** A dimension of something that this instrument doesn't have. */
function notHere({ id, feature }: Settable, position: Position): Problem {
  return {
    ...{ code: "unknown-name", position, name: id, found: `a dimension of ${feature}` },
    ...{ allowed: "a dimension of what this instrument has", hint: `remove it, or ${wanted[feature!]}` },
  };
}

function unknown(id: string, found: string, position: Position): Problem {
  const known = [...settables.keys()];
  const allowed = "a dimension that can be set";
  return {
    ...{ code: "unknown-name", position, name: id, found: quoted(found), allowed },
    hint: didYouMean(found, known, "patternloft check ORDER lists them all"),
  };
}

function circle(id: string, way: readonly string[], position: Position): Problem {
  const hint = "give one of them a value of its own";
  const found = way.slice(way.indexOf(id)).join(" from ");
  return {
    code: "contradiction",
    position,
    name: id,
    found,
    allowed: "a value that doesn't follow from itself",
    hint,
  };
}

function noValue(id: string, count: Count, position: Position): Problem {
  const hint = `add ${count}: to its value, least and most`;
  return {
    code: "missing",
    position,
    name: id,
    found: `no value for ${count} strings`,
    allowed: "one a string count",
    hint,
  };
}

/** A design whose own range allows what makes no sense of a dimension, such as an angle over 60 degrees: told where it does. */
function beyondSense(
  { id, kind, ...sense }: Settable,
  range: { readonly least: number; readonly most: number },
  written: Written,
  path: readonly string[],
): Problem[] {
  const allowed = `${quantityText(sense.least, kind)} to ${quantityText(sense.most, kind)}`;
  return (["least", "most"] as const).flatMap((end): Problem[] => {
    if (range[end] >= sense.least && range[end] <= sense.most) return [];
    const found = `${end} ${quantityText(range[end], kind)}`;
    const hint = `${range[end] < sense.least ? "raise" : "lower"} its ${end} in the design`;
    return [{ code: "range", position: written.at([...path, end]), name: id, found, allowed, hint }];
  });
}

function outOfRange({ id, kind, value, least, most, source, follows, position }: SpecValue): Problem[] {
  const sense = settables.get(id)!;
  const [low, high] = [Math.max(least, sense.least), Math.min(most, sense.most)];
  if (value >= low && value <= high) return [];
  const allowed = `${quantityText(low, kind)} to ${quantityText(high, kind)}`;
  const found = quantityText(value, kind);
  const hint =
    follows !== null
      ? `it follows from ${follows}: change that less, or set ${id} too`
      : source === "order" || source === "command line"
        ? `the design allows no more; try ${quantityText(value < low ? low : high, kind)}`
        : "mend the design: its value, least and most contradict each other";
  return [{ code: "range", position, name: id, found, allowed, hint }];
}
