// Where the words of a drawing stand, so that tests can ask whether they leave it or lie upon each other.
import { textWidth } from "../../adapters/pictures/letter-widths.ts";

export interface Box {
  readonly words: string;
  readonly left: number;
  readonly right: number;
  /** Of small letters and capitals; what hangs below the line is not counted. */
  readonly top: number;
  readonly bottom: number;
}

const TEXT = /<text([^>]*)>([^<]*)<\/text>/gu;
const X_HEIGHT = 9;

export function textBoxes(svg: string): readonly Box[] {
  return [...svg.matchAll(TEXT)].map(([, attributes = "", escaped = ""]) => {
    const words = escaped.replace(/&(?:amp|lt|gt|quot|#39);/gu, "&");
    const width = textWidth(words, attributes.includes('class="name"'));
    const x = Number(/ x="([^"]*)"/u.exec(attributes)?.[1]);
    const bottom = Number(/ y="([^"]*)"/u.exec(attributes)?.[1]);
    const anchor = /text-anchor="(\w+)"/u.exec(attributes)?.[1];
    const left = anchor === "end" ? x - width : anchor === "middle" ? x - width / 2 : x;
    return { words, left, right: left + width, top: bottom - X_HEIGHT, bottom };
  });
}

/** Pairs of words that lie upon each other. */
export function collisions(boxes: readonly Box[]): readonly string[] {
  return boxes.flatMap((one, index) =>
    boxes
      .slice(index + 1)
      .filter(
        (other) =>
          one.left < other.right &&
          other.left < one.right &&
          one.top < other.bottom &&
          other.top < one.bottom,
      )
      .map((other) => `${one.words} / ${other.words}`),
  );
}
