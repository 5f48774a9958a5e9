/**
 * What a file is by its first bytes, before any decoder sees it: the names of files and the types that platforms state are said by whoever
 * sends, and decoders of drawings and documents, which can refer to other files, are never to be reached.
 */

export type Format = "jpeg" | "png" | "webp" | "avif" | "heic" | "gif" | "other";

/** Brands of ISO/IEC 14496-12 files that hold pictures: AVIF (AV1), and HEIF with the video coding of telephones (ISO/IEC 23008-12). */
const AVIF_BRANDS = new Set(["avif", "avis"]);
const HEIC_BRANDS = new Set(["heic", "heix", "heim", "heis", "hevc", "hevx", "mif1", "msf1"]);

export function formatOf(bytes: Uint8Array): Format {
  const start = String.fromCharCode(...bytes.subarray(0, 64));
  if (start.startsWith("\xff\xd8\xff")) return "jpeg";
  if (start.startsWith("\x89PNG\r\n\x1a\n")) return "png";
  if (/^GIF8[79]a/u.test(start)) return "gif";
  if (start.startsWith("RIFF") && start.startsWith("WEBP", 8)) return "webp";
  return start.startsWith("ftyp", 4) ? formatOfBrands(start) : "other";
}

/** The brand, then, after a version number, those it is compatible with: one that is named "mif1" may still be AVIF. */
function formatOfBrands(start: string): Format {
  const size = Math.min(start.length, start.charCodeAt(2) * 256 + start.charCodeAt(3));
  const brands = [start.slice(8, 12)];
  for (let at = 16; at + 4 <= size; at += 4) brands.push(start.slice(at, at + 4));
  if (brands.some((brand) => AVIF_BRANDS.has(brand))) return "avif";
  return brands.some((brand) => HEIC_BRANDS.has(brand)) ? "heic" : "other";
}
