/** A text in the capitals that drawings are lettered in; what stroke lettering has no letter for is left blank. */
export function lettered(text: string): string {
  return text.toUpperCase().replace(/[^ -~]/g, " ");
}
