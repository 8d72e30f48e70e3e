/** How deep a batten is, a handhold's radius, the index pins, what is bored for a handhold's bolt and to hang it up, mm. */
export const holdingSizes = {
  ...{ batten: 16, hand: 20, pins: [6, 8], bolt: 8.5, hang: 10, rim: 20, spare: 2 },
} as const;
