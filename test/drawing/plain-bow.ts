import type { BowAnglesPlotInput } from "../../src/drawing/plot/bow-angles-input.ts";

/** What the bow's plot shows but for the hand, of strings round a circle of 43 mm, some degrees apart, all turned by a lean. */
export function plainBow(count: number, apart: number, lean: number): Omit<BowAnglesPlotInput, "hand"> {
  const at = (i: number) => ((90 - ((count - 1) / 2 - i) * apart - lean) * Math.PI) / 180;
  const names = ["E5", "A4", "D4", "G3", "C3", "F2", "Bb1"];
  const tilt = (i: number) => 90 - ((at(i) + at(i + 1)) / 2) * (180 / Math.PI);
  const strings = Array.from({ length: count }, (_, i) => {
    const inner = i > 0 && i < count - 1;
    const range = inner ? { angle: apart, tilt: { treble: tilt(i - 1), bass: tilt(i) } } : null;
    return { name: names[i]!, y: 43 * Math.cos(at(i)), z: 43 * Math.sin(at(i)), range };
  });
  const outermost = { treble: tilt(0) + apart, bass: tilt(count - 2) - apart };
  return { crown: { y: 0, z: 0, radius: 43 }, strings, outermost };
}
