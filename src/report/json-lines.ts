/**
 * A record as JSON in which every entry of a list stands on a line of its own, so that a text diff shows just the entries
 * that changed.
 */
export function jsonLines(record: { readonly [key: string]: unknown }): string {
  const fields = Object.entries(record).map(
    ([key, value]) => `  ${JSON.stringify(key)}: ${fieldText(value)}`,
  );
  return `{\n${fields.join(",\n")}\n}\n`;
}

function fieldText(value: unknown): string {
  if (!Array.isArray(value) || value.length === 0) return JSON.stringify(value);
  return `[\n${value.map((entry) => `    ${JSON.stringify(entry)}`).join(",\n")}\n  ]`;
}
