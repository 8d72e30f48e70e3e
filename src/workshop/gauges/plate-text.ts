/** The lettering of printed gauges, mm: strokes two nozzles wide, raised by three layers of 0.2 (G). */
export const plateText = { height: 4, stroke: 0.8, raised: 0.6 } as const;
