// What is drawn and what is developed: a handbook's drawings, broken, into pictures, and the bytes of photographs with some of them turned.
// The libraries behind are not ours and not JavaScript: one that falls takes the process along, and so the run.
import sharp from "sharp";
import { demonstrationHandbook } from "../../adapters/configuration.ts";
import { OutsideError } from "../../adapters/errors.ts";
import { readHandbookFolder } from "../../adapters/handbook-folder/index.ts";
import { developed } from "../../adapters/photographs/developed.ts";
import { pngOf } from "../../adapters/pictures/png.ts";
import { pick } from "../support/draws.ts";
import { scene, withEverything, withHiddenPlaces } from "../support/photographs.ts";
import { brokenBytes, brokenText, wellFormed } from "./pieces.ts";
import { shown, type Target } from "./target.ts";

const LONGEST_MILLISECONDS = 10_000;

const nestings = [
  `<g id="a"><path d="M0 0h9"/></g><g id="b"><use href="#a"/><use href="#a"/></g><g id="c"><use href="#b"/><use href="#b"/></g>`,
  `<g id="d"><use href="#d"/></g>`,
  `<pattern id="p" width="1e-9" height="1e-9"><rect width="1" height="1"/></pattern><rect fill="url(#p)" width="99" height="99"/>`,
  `<text font-size="1e9" x="-1e9">x</text>`,
  `<circle r="1e300" stroke-width="1e-300" stroke="#000" stroke-dasharray="1e-9"/>`,
  `<image href="file:///etc/passwd"/>`,
  `<style>@import url(x)</style>`,
  `<path d="M0 0${"l1 1".repeat(2000)}" stroke-dasharray="0.001"/>`,
];

export const drawings: Target = {
  name: "drawings",
  about: "a handbook's drawings, broken, into pictures",
  async open() {
    const read = await readHandbookFolder(demonstrationHandbook);
    if (!read.ok) throw new Error("the demonstration cannot be read");
    const known = read.files.filter(({ path }) => path.endsWith(".svg")).map(({ text }) => text);
    if (known.length === 0) throw new Error("the demonstration has no drawing");
    return {
      close: async () => undefined,
      async attempt(chance) {
        const lines = pick(chance, known).replaceAll(">", ">\n");
        const added = chance() < 0.4 ? lines.replace("</svg>", `${pick(chance, nestings)}\n</svg>`) : lines;
        const svg = wellFormed(brokenText(chance, added, pick(chance, known).replaceAll(">", ">\n")));
        const from = performance.now();
        try {
          await pngOf(svg);
        } catch (failure) {
          if (!(failure instanceof OutsideError)) return `${String(failure)} for ${shown(svg)}`;
        }
        const took = performance.now() - from;
        return took > LONGEST_MILLISECONDS ? `took ${took.toFixed(0)} ms: ${shown(svg)}` : undefined;
      },
    };
  },
};

export const photographs: Target = {
  name: "photographs",
  about: "photographs of every form that is taken, with bytes of them turned, cut or joined",
  async open() {
    const picture = scene(200, 120);
    const jpeg = await withEverything(scene(200, 120).jpeg()).toBuffer();
    const known = [
      jpeg,
      Buffer.from(withHiddenPlaces(jpeg)),
      await picture.png().toBuffer(),
      await picture.webp().toBuffer(),
      await picture.avif({ effort: 0 }).toBuffer(),
      await picture.gif().toBuffer(),
    ];
    return {
      close: async () => undefined,
      async attempt(chance) {
        const bytes = brokenBytes(chance, pick(chance, known));
        const given = chance() < 0.1 ? Buffer.concat([bytes, pick(chance, known)]) : bytes;
        const from = performance.now();
        const taken = await developed(given);
        const took = performance.now() - from;
        if (took > LONGEST_MILLISECONDS) return `took ${took.toFixed(0)} ms: ${given.toString("base64")}`;
        if (!taken.ok) return undefined;
        const { format, exif, xmp, iptc } = await sharp(taken.jpeg).metadata();
        return format === "jpeg" && exif === undefined && xmp === undefined && iptc === undefined
          ? undefined
          : `something of the file came along: ${given.toString("base64")}`;
      },
    };
  },
};
