/** What a community knows of a part kind beside the handbook, for its page. */
import type { Handbook, PartKind } from "../../knowledge/index.ts";
import type { PartPage } from "./handbook-page.ts";
import type { Entry } from "./handbook-search.ts";
import type { CommunityShown } from "./open-community.ts";
import type { Site } from "./site.ts";

export async function communityPart(
  { pages }: Site,
  { cover }: Handbook,
  part: PartKind,
  shown: CommunityShown,
): Promise<Omit<PartPage, "handbook" | "part" | "chosen">> {
  const pins = await pages.pins(shown.id);
  return {
    shown,
    pins: pins
      .filter((pin) => pin.handbook === cover.id && (pin.part === null || pin.part === part.id))
      .map(({ block }) => block),
    ...(await pages.seen(shown.id, cover.id, part.id)),
  };
}

/** The pinned answers as the search finds them, on the page of the part they are about. */
export async function pinnedEntries(
  { pages, knowledge }: Site,
  shown: CommunityShown,
): Promise<readonly Entry[]> {
  const parts = knowledge().flatMap(({ handbook: { cover, parts: kinds } }) =>
    kinds.map(({ id, name }) => ({ book: cover.id, bookName: cover.name, id, name })),
  );
  return (await pages.pins(shown.id)).flatMap(({ block, handbook, part, question }) => {
    const place = parts.find(({ book, id }) => book === handbook && (part === null || id === part));
    if (place === undefined) return [];
    const path = `/handbook/${place.book}/${place.id}#pinned`;
    const context = part === null ? place.bookName : place.name;
    return [{ kind: "pin" as const, name: question ?? block.text.slice(0, 120), context, path }];
  });
}
