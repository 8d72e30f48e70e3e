/** The tolerances of the geometry, in mm, each with its one meaning. No other number of this kind stands elsewhere. */
export const tolerance = {
  /** Two places nearer than this are the same place: what exact results are held to. */
  exact: 1e-6,
  /**
   * Crossing points nearer than this become one vertex, and edges nearer than this along a length overlap, while
   * outlines are cut against each other. Far above what rounding does to a double at a metre, far below `exact`.
   */
  snap: 1e-9,
  /**
   * Edges shorter than this are left out while outlines are cut against each other, and their neighbours meet: far
   * above `snap`, so that the direction of an edge is not in doubt, and well below `exact`, so that it is not felt.
   */
  tiny: 1e-7,
  /**
   * An arc whose middle stands off its chord by less than half of this is a line: its centre would be so far away that a double
   * couldn't place it.
   */
  straight: 1e-12,
  /** Ends of a drawn outline nearer than this are joined when an outline is cleaned. */
  join: 1e-3,
  /** How far arcs may stray from the fair curve that they stand for. */
  fair: 0.01,
  /** Directions that differ by less than this run on without a corner: degrees, not mm. */
  kink: 0.05,
  /** Faces of two solids nearer than this, and facing each other, are in contact. */
  contact: 1e-3,
  /** The largest coordinate, size or radius asked for that is taken at all: ten kilometres. */
  largest: 1e7,
  /** How far a mesh may stray from the surface that it stands for, unless asked otherwise. */
  chord: 0.01,
} as const;
