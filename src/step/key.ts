import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** The SHA-256 of a text in UTF-8, as 64 hex digits. */
export function hashOf(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}

/** How many hex digits of a key stand on a drawing, enough that two parts of one workshop never share them. */
const fingerprintDigits = 12;

/** The first 12 hex digits of a step's key, as printed on files and in the report. */
export function fingerprintOf(key: string): string {
  return key.slice(0, fingerprintDigits);
}
