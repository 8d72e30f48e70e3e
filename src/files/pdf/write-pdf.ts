import type { Page } from "../../drawing/tiles/tile-page.ts";
import { fontName, pageContent, pointsPerMm } from "./page-content.ts";
import { letterAdvance, letterProcedure } from "./stroke-font.ts";

/** The library that writes PDFs, in the type of its documents. */
type Document = PDFKit.PDFDocument;

/** Written into every file, so that the same pages give the same bytes on any day. */
const created = new Date(Date.UTC(2000, 0, 1));

/**
 * Pages as a PDF: vectors, at their true size, the lettering as a font of strokes inside the file, nothing compressed.
 *
 * The same pages and title give the same bytes. Throws a LacksLetterError for a text that can't be lettered. The library is loaded when the first page
 * is written.
 */
export async function pdfBytes(pages: readonly Page[], title: string): Promise<Uint8Array> {
  const { default: PdfDocument } = await import("pdfkit");
  // Compressed by the system's own library, the bytes would depend on its version.
  const document: Document = new PdfDocument({
    // The type says that a font has a name; null keeps the library from looking for one of its own.
    ...{ font: null as unknown as string, autoFirstPage: false, compress: false, margin: 0 },
    info: { Title: title, Producer: "patternloft", Creator: "patternloft", CreationDate: created },
  });
  const pieces: Uint8Array[] = [];
  document.on("data", (piece: Uint8Array) => pieces.push(piece));
  const ended = new Promise<void>((resolve, reject) => {
    document.on("end", resolve);
    document.on("error", reject);
  });
  const font = strokeFont(document, lettersOf(pages));
  for (const page of pages) {
    const { paper, scale } = page;
    const size = [(paper.width * pointsPerMm) / scale[0], (paper.height * pointsPerMm) / scale[1]];
    document.addPage({ size: size as [number, number], margin: 0 });
    Object.assign((document.page as unknown as { fonts: object }).fonts, { [fontName]: font });
    (document as unknown as { addContent: (text: string) => void }).addContent(pageContent(page, size[1]!));
  }
  document.end();
  await ended;
  return joined(pieces);
}

function lettersOf(pages: readonly Page[]): string[] {
  const texts = pages.flatMap(({ groups }) => groups.flatMap(({ marks }) => marks.texts));
  return [...new Set(texts.flatMap(({ text }) => [...text]))].sort();
}

/** A font of the third kind: each letter is a small drawing of strokes, with a table that says which letter it is. */
function strokeFont(document: Document, letters: readonly string[]): object {
  const code = (letter: string) => letter.charCodeAt(0);
  const named = (letter: string) => `l${code(letter)}`;
  const stream = (text: string) => {
    const made = document.ref({});
    made.end(text);
    return made;
  };
  const procedures = Object.fromEntries(
    letters.map((letter) => [named(letter), stream(letterProcedure(letter))]),
  );
  const codes = letters.map(code);
  const [first, last] = [Math.min(...codes), Math.max(...codes)];
  const font = document.ref({
    ...{ Type: "Font", Subtype: "Type3", FontBBox: [0, -300, 700, 900] },
    ...{ FontMatrix: [0.001, 0, 0, 0.001, 0, 0], Resources: {}, CharProcs: procedures },
    Encoding: { Type: "Encoding", Differences: letters.flatMap((letter) => [code(letter), named(letter)]) },
    ...{ FirstChar: first, LastChar: last },
    Widths: Array.from({ length: last - first + 1 }, (_, i) =>
      codes.includes(first + i) ? letterAdvance : 0,
    ),
    ToUnicode: stream(unicodeMap),
  });
  (font as unknown as { end: () => void }).end();
  return font;
}

/** Codes are the letters' own numbers. */
const unicodeMap = [
  "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
  "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def",
  "/CMapName /Adobe-Identity-UCS def /CMapType 2 def",
  "1 begincodespacerange <00> <ff> endcodespacerange",
  "2 beginbfrange <20> <7e> <0020> <a1> <ff> <00a1> endbfrange",
  "endcmap CMapName currentdict /CMap defineresource pop end end",
].join("\n");

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
