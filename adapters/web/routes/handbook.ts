/** The handbook as pages to link to: contents, search, a page a part kind. Made once an edition, as long as nothing new is known. */
import type { Hono } from "hono";
import { partById } from "../../../knowledge/index.ts";
import { communityPart, pinnedEntries } from "../community-part.ts";
import { handbookIndex } from "../handbook-search.ts";
import { communityShown } from "../open-community.ts";
import { handbookPage } from "../phrases.ts";
import { renderContents, renderFound } from "../render/handbook.ts";
import { renderPart } from "../render/part.ts";
import { refuse, showPage } from "../respond.ts";
import type { Site } from "../site.ts";

const LONGEST_SEARCH = 120;

export function handbookRoutes(app: Hono, site: Site): void {
  const handbooks = () => site.knowledge().map(({ handbook }) => handbook);
  let indexed = { editions: "", index: handbookIndex([]) };
  /** Made anew with an edition. */
  const index = () => {
    const served = handbooks();
    const editions = served.map(({ edition }) => edition).join();
    if (editions !== indexed.editions) indexed = { editions, index: handbookIndex(served) };
    return indexed.index;
  };

  app.get("/handbook", async (context) => {
    const words = (context.req.query("q") ?? "").trim().slice(0, LONGEST_SEARCH);
    const pinned = words === "" ? [] : await pinnedEntries(site, await communityShown(context, site));
    const main =
      words === ""
        ? renderContents(handbooks(), site.drawings)
        : renderFound(words, index().search(words, pinned));
    return showPage(context, site, {
      title: handbookPage.title,
      place: "handbook",
      main,
      isPrivate: words !== "",
    });
  });

  app.get("/handbook/:book", (context) => {
    const book = handbooks().filter(({ cover }) => cover.id === context.req.param("book"));
    const [only] = book;
    if (only === undefined) return refuse(context, site, "notFound");
    const main = renderContents(book, site.drawings);
    return showPage(context, site, { title: only.cover.name, place: "handbook", main });
  });

  app.get("/handbook/:book/:part", async (context) => {
    const { book, part: id } = context.req.param();
    const handbook = handbooks().find(({ cover }) => cover.id === book);
    const part = handbook && partById(handbook, id);
    if (handbook === undefined || part === undefined) return refuse(context, site, "notFound");
    const known = await communityPart(site, handbook, part, await communityShown(context, site));
    const chosen = (context.req.queries("kind") ?? []).slice(0, 60);
    const page = { handbook: handbook.cover.id, part, chosen, ...known };
    return showPage(context, site, {
      title: part.name,
      description: part.summary,
      place: "handbook",
      isWide: true,
      main: renderPart(handbook, page, site.drawings),
    });
  });
}
