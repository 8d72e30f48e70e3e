import type { Flat } from "../drawing/flat/flat.ts";
import type { FlatFile } from "../drawing/flat/flat-file.ts";
import { expectedOf } from "../files/dxf/expected.ts";
import { readBackDxf } from "../files/dxf/read-back.ts";
import { dxfR12Text } from "../files/dxf/write-r12.ts";
import type { Spec } from "../order/spec.ts";
import { type PackFile, ReadBackError } from "./pack-file.ts";

/** A machine file once more as DXF R12, where a machine of the shop reads nothing newer; read back before it counts. */
export function r12PackFiles(
  { folder, name, what }: FlatFile,
  flat: Flat,
  fingerprint: string,
  { machines }: Spec["shop"],
): PackFile[] {
  if (!machines.some((machine) => "dxf" in machine && machine.dxf === "r12")) return [];
  const path = `${folder}/${name}-r12.dxf`;
  const content = dxfR12Text(flat);
  const readBack = readBackDxf(content, expectedOf(flat), "r12");
  if (readBack.status !== "same") throw new ReadBackError(path, readBack.differences);
  return [{ path, content, what: `for old controllers: ${what}`, fingerprint, readBack }];
}
