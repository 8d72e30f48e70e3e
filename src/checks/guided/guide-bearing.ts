import { plain } from "../../workshop/guided/fault.ts";
import type { Fixture } from "../../workshop/guided/fixture.ts";
import { ofSetUp } from "./fixture-check.ts";

/** Whether more than half of what rides bears on the template's edge, and a bit clears its bush. Found: the part that bears, or the bush's diameter, mm. */
export const guideBearing = ofSetUp<Pick<Fixture, "setUp" | "sheet">>(
  "guide.bearing",
  {
    stake: "injury",
    unit: "mm",
    limit: 0,
    source: "published shaper and router guidance: more than half bears, a bit clears its bush by 1.6",
  },
  ({ cutter, guide }, { sheet }) => {
    if (guide.kind === "bush") {
      const limit = cutter.diameter + 1.6;
      const clears = guide.diameter >= limit - 1e-6;
      const why = clears
        ? `${guide.id} is wide enough for ${cutter.id}: measure its bore, which clears the bit by 1.6 on diameter`
        : `${cutter.id} doesn't clear ${guide.id}: take a bush over ${plain(limit)} mm across`;
      return { status: clears ? "pass" : "refuse", found: guide.diameter, limit, why };
    }
    const bears = Math.min(guide.height, sheet?.kind === "ok" ? sheet.thickness : 12);
    const good = bears > guide.height / 2;
    return {
      ...{ status: good ? "pass" : "refuse", found: bears, limit: guide.height / 2 },
      why: good
        ? `${plain(bears)} of ${guide.id}'s ${plain(guide.height)} mm bear on the template's edge`
        : `no more than half of ${guide.id}, ${plain(guide.height)} mm high, bears on the template's edge: take a thicker sheet or a lower guide`,
    };
  },
);
