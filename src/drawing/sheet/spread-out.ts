/**
 * Places along a line moved as little as it takes to stand at least `pitch` apart, in the order given by their values: by least
 * squares, merging neighbours that push each other into one block (pool adjacent violators). Places that are apart stay.
 */
export function spreadOut(places: readonly number[], pitch: number): number[] {
  const order = places.map((_, i) => i).sort((a, b) => places[a]! - places[b]! || a - b);
  const blocks: { sum: number; count: number }[] = [];
  const middle = ({ sum, count }: { sum: number; count: number }) => sum / count;
  for (const [rank, i] of order.entries()) {
    // Less the room that all before it take, an order that never falls is a row that never crowds.
    let block = { sum: places[i]! - rank * pitch, count: 1 };
    while (blocks.length > 0 && middle(blocks.at(-1)!) > middle(block)) {
      const before = blocks.pop()!;
      block = { sum: before.sum + block.sum, count: before.count + block.count };
    }
    blocks.push(block);
  }
  const spread = new Array<number>(places.length);
  const values = blocks.flatMap((block) => Array.from({ length: block.count }, () => middle(block)));
  for (const [rank, i] of order.entries()) spread[i] = values[rank]! + rank * pitch;
  return spread;
}
