/** The scales that a drawing may have, the largest first, as paper to model; ISO 5455 with 1:2.5. */
export const scales: readonly { readonly text: string; readonly factor: number }[] = [
  { text: "1:1", factor: 1 },
  { text: "1:2", factor: 1 / 2 },
  { text: "1:2.5", factor: 1 / 2.5 },
  { text: "1:5", factor: 1 / 5 },
  { text: "1:10", factor: 1 / 10 },
];
