/**
 * How far the guided edge stands from the finished one, mm, along the normal that points out of the wood toward the cutter: half
 * of what the cutter is larger than the guide, both by diameter. Positive stands outside the wood, negative inside it, so that an
 * outside template comes out smaller all round and one for an opening larger.
 */
export function guideOffset(cutter: number, guide: number): number {
  return (cutter - guide) / 2;
}
