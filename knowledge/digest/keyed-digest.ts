/**
 * A text as figures that only somebody with the key can make again: serial numbers are recognised without being kept, and an
 * invitation cannot be guessed.
 */
import { hmac } from "@noble/hashes/hmac.js";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";

/** HMAC-SHA-256 (RFC 2104, FIPS 180-4) of the text under the key, both in UTF-8; 64 hexadecimal figures. */
export function keyedDigest(key: string, text: string): string {
  return bytesToHex(hmac(sha256, utf8ToBytes(key), utf8ToBytes(text)));
}
