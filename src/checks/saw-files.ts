/** The machine files that are sawn to: held back while a check of the sawing refuses. */
export const sawFiles: readonly string[] = ["neck-saw-plan", "neck-saw-side"];
