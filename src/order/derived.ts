import { blanksDerived } from "./blanks-derived.ts";
import { allFixtures } from "./fixture-names.ts";
import { allInsides } from "./inside-names.ts";
import { restsDerived } from "./rests-derived.ts";
import { type Side, sides } from "./side.ts";

/** A dimension that is worked out and can't be set: the form of its name, and the settable ones to change instead. */
export type Derived = { readonly form: RegExp; readonly from: readonly string[] };

/** What every worked-out dimension follows from, for whoever tries to set one. */
export const derived: readonly Derived[] = [
  { form: /^string\.[A-Z][#b]?\d\.length$/, from: ["string.length", "nut.gap", "bridge.spread"] },
  {
    form: /^string\.[A-Z][#b]?\d\.tension$/,
    from: ["string.length", "the string's mass per length and pitch"],
  },
  { form: /^string\.[A-Z][#b]?\d\.pitch$/, from: ["the string's entry in the order or in strings.yaml"] },
  {
    form: /^string\.[A-G][#b]?\d\.offset\.(nut|bridge)$/,
    from: ["nut.gap", "bridge.spread", "the strings' diameters"],
  },
  {
    form: /^(nut|bridge)\.[A-G][#b]?\d\.bottom$/,
    from: ["fingerboard.radius", "string.clearance.nut.high", "core.slope"],
  },
  {
    form: /^inlay\.[A-Za-z0-9][A-Za-z0-9.-]*\.unreached$/,
    from: ["inlay.cutter", "inlay.length", "inlay.width"],
  },
  { form: /^fret\.\d+$/, from: ["string.length", "frets"] },
  { form: /^fret\.slot\.width$/, from: ["fret.tang.width", "fret.slot.fit"] },
  { form: /^fret\.slot\.depth$/, from: ["fret.tang.depth", "fret.slot.under"] },
  { form: /^fret\.slot\.left$/, from: ["fingerboard.edge", "fret.tang.depth", "fret.slot.under"] },
  { form: /^fret\.length\.(first|last)$/, from: ["fret.inset", "nut.gap", "nut.margin"] },
  {
    form: /^fret\.dressing\.(treble|bass)$/,
    from: ["fret.crown.height", "fret.bevel", "fret.dressing", "fret.dressing.under"],
  },
  {
    form: /^string\.[A-G][#b]?\d\.fret\.(first|least)$/,
    from: ["string.clearance.nut.high", "string.clearance.end.high", "fret.crown.height"],
  },
  {
    form: /^string\.[A-G][#b]?\d\.gap\.(nut|end|\d+(\.\d+)?)$/,
    from: [
      ...["string.clearance.nut.high", "string.clearance.nut.low", "string.clearance.end.high"],
      ...["string.clearance.end.low", "fingerboard.scoop.high", "fingerboard.scoop.low"],
    ],
  },
  {
    form: /^string\.[A-G][#b]?\d\.scoop$/,
    from: ["fingerboard.scoop.high", "fingerboard.scoop.low", "fingerboard.radius"],
  },
  {
    form: /^string\.angle$/,
    from: ["string.clearance.end.high", "string.clearance.end.low", "fingerboard.radius"],
  },
  { form: /^nut\.(spread|pitch)$/, from: ["nut.gap", "the strings' diameters"] },
  { form: /^nut\.width$/, from: ["nut.gap", "nut.margin", "the strings' diameters"] },
  { form: /^nut\.height$/, from: ["fingerboard.edge", "fingerboard.radius", "string.clearance.nut.high"] },
  { form: /^bridge\.(gap|pitch)$/, from: ["bridge.spread", "the strings' diameters"] },
  { form: /^bridge\.radius$/, from: ["fingerboard.radius", "bridge.spread", "string.clearance.end.high"] },
  { form: /^bridge\.(top|height)$/, from: ["string.clearance.end.high", "fingerboard.radius", "core.slope"] },
  { form: /^bridge\.included-angle$/, from: ["tailpiece.height", "afterlength", "core.slope"] },
  {
    form: /^(bridge|string\.[A-G][#b]?\d)\.(load|lean)$/,
    from: ["tailpiece.height", "afterlength", "core.slope", "string.length"],
  },
  { form: /^bridge\.(side|load\.(bass|treble))$/, from: ["bridge.spread", "nut.gap", "tailpiece.spread"] },
  {
    form: /^bridge\.resultant$/,
    from: ["bridge.tilt", "bridge.foot.thickness", "bridge.top.thickness", "core.slope"],
  },
  { form: /^bridge\.friction$/, from: ["core.slope", "tailpiece.height"] },
  { form: /^bridge\.shear$/, from: ["core.slope", "tailpiece.height", "the saddle's screws"] },
  {
    form: /^string\.[A-G][#b]?\d\.stress$/,
    from: ["string.length", "pitch.standard", "the string's mass per length and pitch"],
  },
  {
    form: /^strings\.tension\.(total|spread|centre\.(nut|bridge))$/,
    from: ["string.length", "the strings' masses per length and pitches"],
  },
  {
    form: /^bow\.[A-G][#b]?\d\.(angle|tilt\.(bass|treble))$/,
    from: ["bridge.spread", "fingerboard.radius", "string.clearance.end.high", "string.clearance.end.low"],
  },
  {
    form: /^bow\.tilt\.(bass|treble)$/,
    from: ["bridge.spread", "fingerboard.radius", "string.clearance.end.high", "string.clearance.end.low"],
  },
  {
    form: /^bow\.clearance\.board\.(bass|treble)$/,
    from: ["string.clearance.end.high", "string.clearance.end.low", "fingerboard.radius"],
  },
  {
    form: /^bow\.(clearance|room)\.(bass|treble)$/,
    from: ["core.slope", "core.drop", "core.width", "fingerboard.radius"],
  },
  { form: /^tailpiece\.(pull|lift)$/, from: ["tailpiece.height", "afterlength", "string.length"] },
  { form: /^tailpiece\.(angle|exit)$/, from: ["tailpiece.height", "afterlength", "core.slope"] },
  { form: /^tailpiece\.end$/, from: ["tailpiece.length", "afterlength", "tailpiece.height"] },
  { form: /^tailpiece\.gap$/, from: ["tailpiece.spread", "the strings' diameters"] },
  { form: /^tailpiece\.clearance$/, from: ["tailpiece.height", "tailpiece.thickness"] },
  { form: /^string\.[A-G][#b]?\d\.afterlength$/, from: ["afterlength", "tailpiece.slant"] },
  { form: /^fingerboard\.width\.(nut|\d+)$/, from: ["nut.gap", "nut.margin", "fingerboard.margin.end"] },
  {
    form: /^fingerboard\.width\.end$/,
    from: ["bridge.spread", "fingerboard.margin.end", "fingerboard.length"],
  },
  { form: /^fingerboard\.(thickness|crown)\.(nut|end)$/, from: ["fingerboard.edge", "fingerboard.radius"] },
  {
    form: /^fingerboard\.radius\.(nut|end)$/,
    from: ["fingerboard.radius", "nut.gap", "bridge.spread", "the design's surface"],
  },
  {
    form: /^fingerboard\.edge\.least$/,
    from: ["fingerboard.edge", "fingerboard.scoop.high", "fingerboard.scoop.low", "fingerboard.radius"],
  },
  { form: /^fingerboard\.overhang$/, from: ["fingerboard.length", "core.start"] },
  {
    form: /^fingerboard\.overhang\.gap$/,
    from: ["fingerboard.length", "core.start", "core.drop", "core.slope"],
  },
  { form: /^fingerboard\.blank\.length$/, from: ["fingerboard.length", "fingerboard.allowance.end"] },
  {
    form: /^fingerboard\.blank\.width$/,
    from: ["bridge.spread", "fingerboard.margin.end", "fingerboard.allowance.side"],
  },
  {
    form: /^fingerboard\.blank\.thickness$/,
    from: ["fingerboard.edge", "fingerboard.radius", "fingerboard.allowance.face"],
  },
  {
    form: /^neck\.wood\.(nut|heel)$/,
    from: ["neck.thickness.nut", "neck.thickness.heel", "fingerboard.radius"],
  },
  { form: /^neck\.lowest$/, from: ["core.depth", "core.slope", "core.end"] },
  { form: /^neck\.blank\.length$/, from: ["core.end", "head.row", "head.margin", "neck.allowance.end"] },
  { form: /^neck\.blank\.width$/, from: ["core.width", "core.taper", "neck.allowance.side"] },
  { form: /^neck\.blank\.thickness$/, from: ["core.depth", "core.slope", "neck.allowance.face"] },
  { form: /^pin\.head\.x$/, from: ["head.row", "head.margin", "neck.allowance.end"] },
  { form: /^pin\.tail\.x$/, from: ["core.end", "neck.allowance.end"] },
  { form: /^neck\.blank\.plies$/, from: ["neck.plies", "the shop's stock"] },
  { form: /^neck\.ply\.thickness$/, from: ["neck.plies", "core.width", "neck.allowance.side"] },
  { form: /^head\.(length|width)$/, from: ["head.row", "head.margin", "head.column", "head.edge"] },
  { form: /^tuner\.hole\.back$/, from: ["tuner.hole", "head.thickness"] },
  ...sides.flatMap(ofWing),
  {
    form: /^body\.strings$/,
    from: ["body.drop", "core.slope", "bridge.spread"],
  },
  {
    form: ofFixture("fixture", "\\.offset"),
    from: ["the shop's cutters and guides", "the order's fixtures"],
  },
  {
    form: ofFixture("virtual-cut", ""),
    from: ["the shop's machines, cutters and guides", "the part's outline"],
  },
  { form: /^body\.end$/, from: ["body.start", "body.length"] },
  { form: /^body\.width$/, from: ["body.lower.width", "body.upper.width"] },
  { form: /^body\.area$/, from: ["body.length", "body.upper.width", "body.waist.width", "body.lower.width"] },
  {
    form: /^body\.wall$/,
    from: ["core.width", "body.waist.width", "body.head.width", "body.head.corner", "body.length"],
  },
  { form: /^body\.floor$/, from: ["body.thickness", "body.drop", "core.depth"] },
  { form: /^body\.recess\.depth$/, from: ["core.depth", "body.drop"] },
  { form: /^body\.recess\.width$/, from: ["core.width", "core.taper", "body.recess.clearance"] },
  { form: /^body\.recess\.end$/, from: ["core.end", "core.slope", "body.recess.clearance"] },
  { form: /^body\.under\.board$/, from: ["body.drop", "body.start", "core.slope", "core.drop"] },
  { form: /^nut\.(bend|splay)\.(least|most)$/, from: ["head.angle", "head.column", "tuner.height"] },
  {
    form: /^bridge\.foot\.x$/,
    from: ["string.length", "core.start", "bridge.tilt", "bridge.foot.thickness"],
  },
  {
    form: /^bridge\.blank\.(length|width|thickness)$/,
    from: ["bridge.foot.width", "bridge.foot.thickness", "bridge.allowance"],
  },
  { form: /^nut\.[A-G][#b]?\d\.fall$/, from: ["head.angle", "head.margin", "tuner.height"] },
  { form: /^nut\.[A-G][#b]?\d\.(slot|depth)$/, from: ["the string's diameter", "nut.allowance"] },
  { form: /^nut\.blank\.length$/, from: ["nut.gap", "nut.margin"] },
  { form: /^nut\.blank\.height$/, from: ["string.clearance.nut.high", "nut.allowance"] },
  { form: /^nut\.blank\.thickness$/, from: ["nut.thickness"] },
  {
    form: /^(neck|fingerboard|bridge|nut|tailpiece|wing-bass|wing-treble|body|rods|cover-[A-Za-z0-9][A-Za-z0-9.-]*)\.(mass|volume)$/,
    from: ["the design's woods", "the part's own sizes", "core.depth"],
  },
  {
    form: /^recess\.[A-Za-z0-9][A-Za-z0-9.-]*\.(depth|wall|through)$/,
    from: [
      "the recess in the design",
      "recess.clearance",
      "cover.thickness",
      "what it holds in hardware.yaml",
    ],
  },
  {
    form: /^bore\.[A-Za-z0-9][A-Za-z0-9.-]*\.(length|wall)$/,
    from: ["the bore in the design", "the recesses that it joins"],
  },
  { form: /^string\.[A-G][#b]?\d\.mass$/, from: ["the string's mass per length", "string.length"] },
  { form: /^hardware\.mass$/, from: ["the design's hardware"] },
  {
    form: /^(mass\.total|balance\.[xyz])$/,
    from: ["the design's woods and hardware", "core.depth", "core.width", "head.thickness"],
  },
  ...blanksDerived,
  ...restsDerived,
  {
    form: /^balance\.(moment|hold)$/,
    from: ["hold.x", "the design's woods and hardware", "head.thickness"],
  },
];

/** What a dimension follows from, when it is a worked-out one. */
export function followsFrom(id: string): readonly string[] | undefined {
  return derived.find(({ form }) => form.test(id))?.from;
}

/** What is worked out of the wing on a side. */
function ofWing(side: Side): Derived[] {
  const form = (name: string) => new RegExp(`^wing\\.${side}\\.(?:${name})$`);
  const own = (...names: string[]) => names.map((name) => `wing.${side}.${name}`);
  return [
    { form: form("bevel|mitre|table"), from: [...own("splay", "cant", "rake"), "core.taper"] },
    { form: form("strings"), from: [...own("cant", "drop"), "core.slope", "bridge.spread"] },
    { form: form("pin\\.hole"), from: own("pin", "pin.fit") },
    { form: form("x"), from: [...own("start"), "core.start", "core.slope"] },
    { form: form("joint\\.(?:length|depth|area)"), from: own("length", "thickness", "cant") },
    {
      form: form("inside\\.(?:head|tail)\\.(?:front|back)"),
      from: [...own("drop", "rake", "thickness"), "core.depth"],
    },
    {
      form: form("pin\\.[A-Za-z0-9][A-Za-z0-9-]*\\.(?:along|down|wall|wall\\.core)"),
      from: ["the pin's place in the design", ...own("pin", "pin.depth", "cant")],
    },
  ];
}

/** The names of a dimension that every fixture has. */
function ofFixture(before: string, after: string): RegExp {
  const files = [...allFixtures, ...allInsides].map(({ file }) => file);
  return new RegExp(`^${before}\\.(${files.join("|")})${after}$`);
}
