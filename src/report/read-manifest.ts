import { z } from "zod";
import type { Checked } from "../order/problem.ts";

/** A file that a pack's manifest lists; the fingerprint is that of what it rests on, none for reports. */
export type ListedFile = {
  readonly path: string;
  readonly what: string;
  readonly sha256: string;
  readonly fingerprint: string | null;
};

const manifest = z.object({
  order: z.string(),
  files: z.array(
    z.object({ path: z.string(), what: z.string(), sha256: z.string(), fingerprint: z.string().nullable() }),
  ),
});

/** The files that a manifest's text lists, or why it is none; `file` is what to call it. */
export function readManifest(text: string, file: string): Checked<readonly ListedFile[]> {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    data = undefined;
  }
  const result = manifest.safeParse(data);
  if (result.success) return { ok: true, value: result.data.files };
  const position = { file, line: 1, column: 1 };
  const found = data === undefined ? "no JSON" : "no list of files with their fingerprints";
  const allowed = "a manifest as make writes it";
  const hint = "make the pack again, or compare its dimensions.json alone";
  return {
    ok: false,
    problems: [{ code: "syntax", position, name: "the manifest", found, allowed, hint }],
  };
}
