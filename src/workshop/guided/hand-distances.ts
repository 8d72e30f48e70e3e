/** How far hands stay from the cutter, mm: what handholds are placed at (the older manuals), and under what none is allowed (the newer ones; both S). */
export const handDistances = { usual: 305, least: 152 } as const;
