/**
 * The text of a commented order to start from. `id` becomes its number; `schema` is the path of the order schema as seen from
 * the new file, for editors, where there is one.
 */
export function newOrder(id: string, schema: string | undefined): string {
  const head = schema === undefined ? "" : `# yaml-language-server: $schema=${schema}\n`;
  return `${head}# One instrument to build. Lengths take 328, 328 mm, 12.9 in, 1/2 in or 1 1/16 in; angles 12, 12 deg or 12° 30'.
# Look at the numbers:  patternloft check THIS-FILE      Make the pack:  patternloft make THIS-FILE

order: ${id}              # the order's number: names its folder, printed on every sheet
# revision: A             # the shop's own letter, if it keeps one
design: sedge             # models/designs/sedge.yaml
strings: 5                # a count, or a list of strings, highest first: [E5, A4, D4, G3, C3]
hand: right               # right or left: the hand that holds the bow
frets: none
shop: samphire            # models/shops/samphire.yaml

# Any dimension that can be set, in place of the design's own:
# set:
#   string.length: 326 mm
#   nut.gap: 4.6 mm
`;
}
