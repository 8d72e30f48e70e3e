import type { SolidMoments } from "../../geometry/solid/slices.ts";
import { cross, unit } from "../../geometry/solid/vec3.ts";
import { stretches } from "../../geometry/stretches.ts";
import type { NutSolidInput } from "../../instrument/nut/solid.ts";
import { step } from "../../step/step.ts";
import { type Measured, measuredOf, together } from "./moments.ts";

/**
 * A finished nut's volume and middle. Under its crown it is integrated over its plan as columns, and so is what each slot takes away: the column
 * from the slot's bottom, half a cylinder along the string's way, to the crown. Slots don't overlap (nut.wall sees to it).
 */
export const nutMeasured = step("mass.nut", 1, (given: NutSolidInput): Measured => {
  return measuredOf(
    together(
      [whole(given)],
      given.strings.map((string) => slot(given, string)),
    ),
  );
});

/** The crown's height over the nut's base at y. */
function crownAt({ crown: { centre, radius } }: NutSolidInput, y: number): number {
  return centre.y + Math.sqrt(radius ** 2 - (y - centre.x) ** 2);
}

function whole(given: NutSolidInput): SolidMoments {
  const { thickness, width } = given;
  const columns = stretches(-thickness, 0, [], 4).flatMap((along) => {
    const half = (width.board + ((width.head - width.board) * -along.x) / thickness) / 2;
    return stretches(-half, half, [], 8).map(({ x: y, weight }) =>
      column(along.x, y, 0, crownAt(given, y), along.weight * weight),
    );
  });
  return together(columns);
}

function column(x: number, y: number, low: number, high: number, area: number): SolidMoments {
  const volume = area * (high - low);
  return { volume, x: volume * x, y: volume * y, z: (volume * (low + high)) / 2 };
}

function slot(given: NutSolidInput, { diameter, at, to }: NutSolidInput["strings"][number]): SolidMoments {
  const way = unit({ x: to.x - at.x, y: to.y - at.y, z: to.z - at.z });
  const aside = unit(cross(way, { x: 0, y: 0, z: 1 }));
  const up = cross(aside, way);
  const radius = diameter / 2;
  const columns = stretches(-given.thickness, 0, [], 6).flatMap((along) =>
    stretches(-radius, radius, [], 8).map(({ x: off, weight }) => {
      // The line along the slot's bottom so far aside of its middle, where it passes x. At the board half the diameter lies under the string's centre.
      const deep = Math.sqrt(radius ** 2 - off ** 2);
      const start = {
        x: at.x + off * aside.x - deep * up.x,
        y: at.y + off * aside.y - deep * up.y,
        z: at.z + radius / up.z - radius - deep * up.z,
      };
      const t = (along.x - start.x) / way.x;
      const y = start.y + t * way.y;
      const [low, high] = [start.z + t * way.z, crownAt(given, y)];
      // Strips along the way lie nearer to each other along y than square to it.
      return column(along.x, y, Math.min(low, high), high, (along.weight * weight) / Math.abs(aside.y));
    }),
  );
  return together(columns);
}
