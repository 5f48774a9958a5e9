/**
 * A sheet of paper to write on from top to bottom: tagged PDF 1.7 with letters of its own, so that it reads the same everywhere, aloud too.
 * The same content gives the same bytes: its date is the one it is given.
 */
import { fileURLToPath } from "node:url";
import PdfDocument from "pdfkit";

export interface Paper {
  heading(text: string, level: 1 | 2 | 3): void;
  paragraph(text: string, look?: "plain" | "strong" | "quiet"): void;
  /** Rows of two columns: a label, a value. */
  facts(rows: readonly { readonly label: string; readonly value: string }[]): void;
  /** A name, words, and a bar as long as the share. */
  bar(name: string, words: string, share: number): void;
  /** A fact in words over a bar that goes from the middle to the right, or hatched to the left; `weight` is from -1 to 1. */
  balance(words: string, weight: number): void;
  /** Two to a row. */
  photographs(all: readonly Photograph[]): void;
  /** All bytes, with page numbers and `foot` on every page. */
  finished(foot: string, pageWords: (page: number, of: number) => string): Promise<Uint8Array>;
}

export interface Photograph {
  readonly jpeg: Uint8Array;
  readonly alternative: string;
}

const MARGIN = 56;
const FOOT = 40;
const SIZES = { 1: 18, 2: 13, 3: 11 } as const;
const TEXT = 10;
const LABEL_WIDTH = 150;
const PHOTOGRAPH_HEIGHT = 180;
const GAP = 8;
const ROOM_FOR_NUMBER = 60;
const INK = "#000000";
const QUIET = "#444444";
const RULE = "#999999";

const fontFile = (name: string) => fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}`));

export function paper(title: string, at: Date): Paper {
  const document = new PdfDocument({
    size: "A4",
    margins: { top: MARGIN, left: MARGIN, right: MARGIN, bottom: MARGIN + FOOT },
    pdfVersion: "1.7",
    tagged: true,
    lang: "en-GB",
    displayTitle: true,
    bufferPages: true,
    info: { Title: title, Producer: "witness-mark", Creator: "witness-mark", CreationDate: at, ModDate: at },
  });
  document.registerFont("plain", fontFile("DejaVuSans.ttf"));
  document.registerFont("strong", fontFile("DejaVuSans-Bold.ttf"));
  document.font("plain").fontSize(TEXT).lineGap(2);
  const chunks: Buffer[] = [];
  document.on("data", (chunk: Buffer) => chunks.push(chunk));
  const whole = document.struct("Document");
  document.addStructure(whole);
  const width = document.page.width - 2 * MARGIN;
  const bottom = () => document.page.height - document.page.margins.bottom;

  const tagged = (tag: string, draw: () => void, alternative?: string) =>
    whole.add(document.struct(tag, alternative === undefined ? {} : { alt: alternative }, draw));
  /** Begins a new page where less than this is left. */
  const room = (height: number) => {
    if (document.y + height > bottom()) document.addPage();
  };
  /** The library cannot mark what is only there for the eye by itself. */
  const forTheEye = (draw: () => void) => {
    document.markContent("Artifact", { type: "Layout" });
    draw();
    document.endMarkedContent();
  };

  return {
    heading(text, level) {
      room(4 * SIZES[level]);
      if (level > 1) document.moveDown(0.6);
      tagged(`H${level}`, () =>
        document
          .font("strong")
          .fontSize(SIZES[level])
          .fillColor(INK)
          .text(text, MARGIN, document.y, { width }),
      );
      document.font("plain").fontSize(TEXT);
      if (level === 2) {
        forTheEye(() =>
          document
            .moveTo(MARGIN, document.y)
            .lineTo(MARGIN + width, document.y)
            .lineWidth(0.5)
            .strokeColor(RULE)
            .stroke(),
        );
        document.moveDown(0.3);
      }
    },
    paragraph(text, look = "plain") {
      room(TEXT * 2);
      tagged("P", () =>
        document
          .font(look === "strong" ? "strong" : "plain")
          .fontSize(look === "quiet" ? TEXT - 1.5 : TEXT)
          .fillColor(look === "quiet" ? QUIET : INK)
          .text(text, MARGIN, document.y, { width }),
      );
      document.font("plain").fontSize(TEXT).fillColor(INK).moveDown(0.3);
    },
    facts(rows) {
      for (const { label, value } of rows) {
        const wide = width - LABEL_WIDTH;
        const height = Math.max(
          document.heightOfString(label, { width: LABEL_WIDTH - 8 }),
          document.heightOfString(value, { width: wide }),
        );
        room(height);
        const top = document.y;
        tagged("P", () => {
          document.fillColor(QUIET).text(label, MARGIN, top, { width: LABEL_WIDTH - 8 });
          document.fillColor(INK).text(value, MARGIN + LABEL_WIDTH, top, { width: wide });
        });
        // What is longer than a page has gone on to the next, and ends there.
        document.y = (top + height > bottom() ? document.y : top + height) + 2;
      }
      document.moveDown(0.3);
    },
    bar(name, words, share) {
      room(TEXT * 3);
      const top = document.y;
      tagged("P", () => {
        document.font("strong").text(name, MARGIN, top, { width: width / 2 });
        const after = document.y;
        document.font("plain").text(words, MARGIN + width / 2, top, { width: width / 2, align: "right" });
        document.y = Math.max(after, document.y);
      });
      forTheEye(() => {
        document.rect(MARGIN, document.y, width, 5).lineWidth(0.4).strokeColor(RULE).stroke();
        document
          .rect(MARGIN, document.y, width * share, 5)
          .fillColor(INK)
          .fill();
      });
      document.fillColor(INK);
      document.y += 10;
    },
    balance(words, weight) {
      const height = document.heightOfString(words, { width });
      room(height + 14);
      tagged("P", () => document.fillColor(INK).text(words, MARGIN, document.y, { width }));
      const centre = MARGIN + width / 2;
      const length = Math.max(1.5, Math.abs(weight) * (width / 2));
      forTheEye(() => drawBalance(document, centre, document.y + 1, weight > 0 ? length : -length));
      document.y += 12;
    },
    photographs(all) {
      const each = (width - GAP) / 2;
      let top = document.y;
      for (const [index, { jpeg, alternative }] of all.entries()) {
        const isLeft = index % 2 === 0;
        if (isLeft) {
          room(PHOTOGRAPH_HEIGHT + GAP);
          top = document.y;
        }
        const left = isLeft ? MARGIN : MARGIN + each + GAP;
        const fit: [number, number] = [each, PHOTOGRAPH_HEIGHT];
        tagged("Figure", () => document.image(Buffer.from(jpeg), left, top, { fit }), alternative);
        document.y = top + PHOTOGRAPH_HEIGHT + GAP;
      }
    },
    finished(foot, pageWords) {
      const { start, count } = document.bufferedPageRange();
      for (let page = start; page < start + count; page += 1) {
        document.switchToPage(page);
        const y = document.page.height - MARGIN;
        // Below the margin the library would begin a new page.
        document.page.margins.bottom = 0;
        forTheEye(() => {
          document.fontSize(TEXT - 2).fillColor(QUIET);
          // An address is not broken, so that it can be copied: a long one is written smaller.
          const fitting = Math.min(1, (width - ROOM_FOR_NUMBER) / document.widthOfString(foot));
          document.fontSize((TEXT - 2) * fitting);
          document.text(foot, MARGIN, y, { lineBreak: false });
          document.fontSize(TEXT - 2);
          document.text(pageWords(page + 1, count), MARGIN, y, { width, align: "right", lineBreak: false });
        });
      }
      whole.end();
      return new Promise((resolve) => {
        document.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
        document.end();
      });
    },
  };
}

/** A bar from the centre: solid to the right, hatched to the left. */
function drawBalance(document: PDFKit.PDFDocument, centre: number, top: number, length: number): void {
  const height = 6;
  if (length > 0) document.rect(centre, top, length, height).fillColor(INK).fill();
  else {
    document
      .lineWidth(0.5)
      .strokeColor(INK)
      .rect(centre + length, top, -length, height)
      .stroke();
    document
      .save()
      .rect(centre + length, top, -length, height)
      .clip();
    for (let x = centre + length - height; x < centre; x += 4) {
      document.moveTo(x, top + height).lineTo(x + height, top);
    }
    document.stroke().restore();
  }
  document
    .moveTo(centre, top - 2)
    .lineTo(centre, top + height + 2)
    .lineWidth(0.8)
    .strokeColor(INK)
    .stroke();
}
