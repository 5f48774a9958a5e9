/** Why a photograph is not taken in, and what to send instead; said by whichever door it came to. */

export type PhotographRefusal =
  | "empty"
  | "too-many-bytes"
  | "no-photograph"
  | "moving"
  | "telephone-format"
  | "too-many-pixels"
  | "too-few-pixels"
  | "damaged";

export const photographRefusals: Readonly<Record<PhotographRefusal, string>> = {
  empty: "The file is empty. Please send the photograph again.",
  "too-many-bytes": "The photograph is larger than 20 MB. Please send a smaller copy.",
  "no-photograph": "That is no photograph I can open. Please send it as JPEG, PNG, WebP or AVIF.",
  moving: "That is a GIF or a moving picture. Please send a single photograph, as JPEG, PNG, WebP or AVIF.",
  "telephone-format":
    "I cannot open HEIC, the format of some telephones. Please send the photograph as JPEG.",
  "too-many-pixels": "The photograph has more than 64 million pixels. Please send a smaller copy.",
  "too-few-pixels":
    "The picture is too small to see a part on it. Please send the photograph as it was taken.",
  damaged: "The photograph is damaged or not whole. Please send it again.",
};
