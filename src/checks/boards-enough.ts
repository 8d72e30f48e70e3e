import type { Check } from "./check.ts";

/** Whether one board of each kind is enough for all blanks, since the shop's stock lists one. Found: how many more are needed. */
export const boardsEnough: Check = {
  id: "cut-list.boards",
  of: ({ blanks: { cutList } }) => {
    const more = cutList.boards.filter(({ number }) => number > 1);
    const names = [...new Set(more.map(({ board }) => board))].join(", ");
    return {
      ...{ status: more.length > 0 ? "attend" : "pass", stake: "spoilage", subject: "blanks" },
      ...{ found: more.length, limit: 0, unit: "", holds: [] },
      why:
        more.length > 0
          ? `one board of ${names} doesn't hold all that comes out of it: have ${more.length} more of that kind at hand`
          : "all blanks come out of one board of each kind",
      source: "the shop's stock; what parting takes is general trade knowledge: default, confirm",
    };
  },
};
