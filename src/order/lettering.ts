/** Letters that have a usual spelling in plain ones. */
const spellings: { readonly [letter: string]: string } = {
  ...{ ä: "ae", ö: "oe", ü: "ue", Ä: "Ae", Ö: "Oe", Ü: "Ue", ß: "ss", æ: "ae", Æ: "Ae", ø: "oe", Ø: "Oe" },
  ...{
    å: "aa",
    Å: "Aa",
    ł: "l",
    Ł: "L",
    đ: "d",
    Đ: "D",
    "°": " deg",
    "×": "x",
    "–": "-",
    "—": "-",
    "’": "'",
  },
};

/**
 * A text in the letters that a drawing's stroke lettering has (plain ASCII): accents dropped, others spelled (ü as ue, ß as
 * ss, ° as deg). `undefined` when a letter is left that has no such spelling: a word must never be lost unasked.
 */
export function lettered(text: string): string | undefined {
  const spelled = [...text].map((letter) => spellings[letter] ?? letter).join("");
  const plain = spelled.normalize("NFKD").replace(/\p{M}/gu, "");
  return /^[\u0020-\u007e]*$/.test(plain) ? plain : undefined;
}
