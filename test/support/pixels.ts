// A picture as its pixels, so that tests can ask what is seen rather than which bytes were written.
import sharp from "sharp";

export interface Pixels {
  readonly width: number;
  readonly height: number;
  /** Brightness of each pixel, row after row: 0 black, 255 white. */
  readonly grey: Uint8Array;
}

export async function greyPixelsOf(picture: Uint8Array): Promise<Pixels> {
  const { data, info } = await sharp(picture).greyscale().raw().toBuffer({ resolveWithObject: true });
  const grey = Uint8Array.from(
    { length: info.width * info.height },
    (_, at) => data[at * info.channels] ?? 0,
  );
  return { width: info.width, height: info.height, grey };
}

/** How many pixels are darker than half. */
export function inkOf({ grey }: Pixels): number {
  return grey.reduce((ink, brightness) => ink + (brightness < 128 ? 1 : 0), 0);
}
