// Photographs as telephones hand them out, made here: coloured so that one can see which way up they stand, with everything in them that must go.
import sharp, { type Sharp } from "sharp";

/** A made-up place, as the degrees, minutes and seconds of Exif 2.32, section 4.6.6, and as plain text in the XMP. */
export const place = { latitude: "51/1 30/1 3230/100", inWords: "51.508972", owner: "Maud Tarrant" };

/** Red on the left, blue on the right, upright; `width` by `height` pixels. */
export function scene(width = 600, height = 400): Sharp {
  const right = { create: { width: width / 2, height, channels: 3 as const, background: "#2030c0" } };
  return sharp({ create: { width, height, channels: 3, background: "#c02020" } }).composite([
    { input: right, left: width / 2, top: 0 },
  ]);
}

/** With owner, place, a profile of colours, and the place once more in XMP. */
export function withEverything(picture: Sharp, orientation = 1): Sharp {
  return picture
    .withMetadata({ orientation })
    .withIccProfile("p3")
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><place>${place.inWords}</place></x:xmpmeta>`)
    .withExif({
      IFD0: { Artist: place.owner, Make: "Lampkin" },
      IFD3: { GPSLatitudeRef: "N", GPSLatitude: place.latitude, GPSMapDatum: "WGS-84" },
    });
}

/** The seconds of the place as they stand in an Exif block: 3230 and 100, four bytes each, low byte first. */
export const placeBytes = Buffer.from([0x9e, 0x0c, 0, 0, 100, 0, 0, 0]);

/** A comment (COM), a block of IPTC (APP13) and a second picture behind the end: where libraries rarely look. */
export function withHiddenPlaces(jpeg: Uint8Array): Uint8Array {
  const segment = (marker: number, text: string) =>
    Buffer.concat([Buffer.from([0xff, marker, 0, text.length + 2]), Buffer.from(text, "latin1")]);
  return Buffer.concat([
    jpeg.subarray(0, 2),
    segment(0xfe, place.owner),
    segment(0xed, `Photoshop 3.0\0${place.owner}`),
    jpeg.subarray(2),
    Buffer.from(place.owner),
  ]);
}

/** A white square. */
export async function whitePng(edge: number): Promise<Uint8Array> {
  return sharp({ create: { width: edge, height: edge, channels: 3, background: "#fff" } })
    .png()
    .toBuffer();
}
