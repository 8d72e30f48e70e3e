// Stands in the bundle for string-width: the help is plain ASCII, and compiling that library's Unicode tables would take
// longer than all the rest of a start.
export default function plainWidth(text) {
  return text.replace(/\u001b\[[\d;]*m/g, "").length;
}
