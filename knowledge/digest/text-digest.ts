/** A text as figures that tell it from every other text and do not give it away: for ids, and for snapshots that an answer cites. */
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** SHA-256 (FIPS 180-4) of the text in UTF-8, 64 hexadecimal figures. */
export function textDigest(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)));
}
