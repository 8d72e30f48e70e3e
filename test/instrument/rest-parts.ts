import { orderText, resolved, sampleText } from "../samples.ts";

/** Thrift with a chin rest that is screwed on. */
export const screwed = (() => {
  const dimension = (id: string, value: string) =>
    `          rest.chin.screw.${id}: { value: ${value}, least: 1 mm, most: 20 mm, tolerance: 0.5 mm, for: a test }\n`;
  const hold =
    `    hold:\n      screws:\n        dimensions:\n${dimension("depth", "4 mm")}${dimension("wall", "2 mm")}` +
    "        holes: [{ id: a, at: [0.2, 0.5], size: 6 mm }, { id: b, at: [0.8, 0.5], size: 6 mm }]\n    face:\n";
  const text = sampleText("designs", "thrift.yaml").replace(
    / {4}hold:\n {6}clamp:\n(.*\n){3} {4}face:\n/,
    hold,
  );
  const spec = resolved(orderText("thrift", 5), {}, { designs: { thrift: text } });
  if (!spec.ok) throw new Error(JSON.stringify(spec.problems));
  return spec.value;
})();
