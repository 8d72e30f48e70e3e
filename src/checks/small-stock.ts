import type { Check } from "./check.ts";

/** Whether the shop has boards for bridge, nut, tailpiece and covers, which may be bought as blanks instead. Found: how many have none. */
export const smallStock: Check = {
  id: "blank.stock.small",
  of: ({ blanks: { small } }) => {
    const without = small.filter(({ stock }) => stock.kind !== "ok");
    const said = without.map(({ part, woods, blank: { length, width, thickness } }) => {
      return `${part} of ${woods.join(" or ")}, ${length} x ${width} x ${thickness} mm`;
    });
    return {
      ...{ status: without.length > 0 ? "attend" : "pass", stake: "spoilage", subject: "small parts" },
      ...{ found: without.length, limit: 0, unit: "", holds: [] },
      why:
        without.length > 0
          ? `no board of the shop holds ${said.join("; ")}: add one to its stock, or buy blanks`
          : "every small part comes out of a board of the shop's stock",
      source: "the shop's stock",
    };
  },
};
