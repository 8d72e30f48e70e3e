import type { Station } from "../../../src/geometry/fair/station.ts";

type Shape = { readonly name: string; readonly closed: boolean; readonly stations: readonly Station[] };

function through(...places: [number, number][]): Station[] {
  return places.map(([x, y]) => ({ x, y }));
}

/** The other half of a body: its stations mirrored, back to front. */
function bothSides(half: readonly Station[]): Station[] {
  const other = half.filter(({ y }) => y !== 0).reverse();
  return [...half, ...other.map(({ x, y }) => ({ x, y: -y }))];
}

/** Named shapes of the kind that the curves are for, mm. */
export const shapes: readonly Shape[] = [
  {
    name: "narrow wing",
    closed: false,
    stations: through([0, 5], [15, 9], [30, 18], [50, 38], [80, 58], [110, 56], [130, 44], [140, 28]),
  },
  {
    name: "waisted wing",
    closed: false,
    stations: [
      ...through([0, 6], [20, 24], [45, 34], [75, 26], [110, 20], [140, 22], [165, 40]),
      ...through([200, 64], [230, 62], [250, 46], [260, 30]),
    ],
  },
  {
    name: "waisted body",
    closed: true,
    stations: bothSides(
      through([0, 0], [20, 70], [80, 100], [140, 80], [180, 62], [220, 75], [280, 115], [340, 90], [360, 0]),
    ),
  },
  {
    name: "uneven steps",
    closed: false,
    stations: through([0, 0], [10, 2], [15, 9], [80, 40], [90, 38], [140, 0]),
  },
  {
    name: "eight points of a circle",
    closed: true,
    stations: through([50, 0], [35, 35], [0, 50], [-35, 35], [-50, 0], [-35, -35], [0, -50], [35, -35]),
  },
  {
    name: "clamped at both ends",
    closed: false,
    stations: [
      { x: 0, y: 0, leave: 90 },
      { x: 40, y: 60, id: "top" },
      { x: 120, y: 45 },
      { x: 150, y: 0, arrive: -90 },
    ],
  },
];
