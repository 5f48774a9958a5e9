/** A car sheet behind its owner's link, as a page and as PDF; whoever has no link finds nothing, and no search engine is let in. */
import type { Context, Hono } from "hono";
import { clientAddress } from "../client-address.ts";
import { carSheetPdf } from "../pdf/car-sheet-pdf.ts";
import { carSheet } from "../phrases.ts";
import { renderCarSheet } from "../render/car-sheet.ts";
import { refuse, showPage } from "../respond.ts";
import type { Site } from "../site.ts";

const DAY_MILLISECONDS = 86_400_000;
const communityForm = /^[\w.:-]{1,120}$/u;

export function carSheetRoutes(app: Hono, site: Site): void {
  app.get("/sheet/:community/:id", async (context) => {
    const { path, sheet } = await found(context, site);
    if (sheet === undefined) return refuse(context, site, "notFound");
    const title = carSheet.title(sheet.thing, sheet.handbookName);
    const main = renderCarSheet(sheet, `${path}/${carSheet.fileName}`, site.drawings);
    return showPage(context, site, { title, main, isPrivate: true });
  });

  app.get(`/sheet/:community/:id/${carSheet.fileName}`, async (context) => {
    const { path, sheet } = await found(context, site);
    if (sheet === undefined) return refuse(context, site, "notFound");
    // It takes a quarter of a second of the processor.
    if (!site.limits.writing.take(clientAddress(context, site))) return refuse(context, site, "tooMuch");
    // A sheet of one day is the same file all day.
    const day = DAY_MILLISECONDS * Math.floor(site.clock.milliseconds() / DAY_MILLISECONDS);
    const bytes = await carSheetPdf(sheet, {
      at: new Date(day),
      address: `${site.address}${path}`,
      photograph: async (id) => (await site.photographs?.read(id))?.bytes,
    });
    return context.body(new Uint8Array(bytes), 200, {
      "content-type": "application/pdf",
      "content-disposition": `inline; filename="${carSheet.fileName}"`,
      "x-robots-tag": "noindex",
    });
  });
}

async function found(context: Context, { pages }: Site) {
  const { community = "", id = "" } = context.req.param() as { community?: string; id?: string };
  const isFit = communityForm.test(community) && /^[0-9a-f]{32}$/u.test(id);
  const sheet = isFit ? await pages.sheet(community, id) : undefined;
  return { sheet, path: `/sheet/${encodeURIComponent(community)}/${id}` };
}
