/** What of a drawing is measured and not pricked through paper, which moves: its layers, and its name in capitals. */
export type FromNumbers = { readonly layers: RegExp; readonly what: string };
