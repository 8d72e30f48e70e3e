/** A text in lines of at most so many letters, broken at spaces; a word longer than a line is broken within. */
export function wrapped(text: string, letters: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) {
      lines[lines.length - 1] = `${last} ${word}`;
      continue;
    }
    for (let start = 0; start < word.length; start += letters) lines.push(word.slice(start, start + letters));
  }
  return lines;
}
