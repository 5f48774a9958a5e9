/** What a community knows, as files for its keepers: sightings as the changeover command reads them, and everything as JSON. */
import { stringify } from "csv-stringify/sync";
import type { Context, Hono } from "hono";
import { keeperOf } from "../keeper-of.ts";
import { goTo, refuse } from "../respond.ts";
import type { Site } from "../site.ts";

export const sightingsPath = (book: string, part: string) => `/desk/export/sightings/${book}/${part}.csv`;
export const jsonPaths = ["observations", "pins", "audit"].map((name) => `/desk/export/${name}.json`);

export function deskExportRoutes(app: Hono, site: Site): void {
  app.get("/desk/export/sightings/:book/:file", (context) =>
    forKeeper(context, site, async (community) => {
      const { book, file } = context.req.param() as { book: string; file: string };
      const part = file.replace(/\.csv$/u, "");
      const all = await site.pages.exported(community);
      const rows = all.filter((one) => one.handbook === book && one.part === part && one.built !== null);
      const records = rows.map(({ id, variant, built, grade, market }) => [
        id,
        variant,
        built,
        grade,
        market ?? "",
      ]);
      const text = stringify(
        [["id", "variant", "built", "grade", "market"], ...records.filter(([, variant]) => variant !== null)],
        { escape_formulas: true },
      );
      return {
        text,
        type: "text/csv; charset=utf-8",
        name: `sightings-${/^[a-z0-9-]+$/u.test(part) ? part : "part"}.csv`,
      };
    }),
  );
  const json = { observations: "exported", pins: "pins", audit: "audit" } as const;
  for (const [name, read] of Object.entries(json) as [
    keyof typeof json,
    (typeof json)[keyof typeof json],
  ][]) {
    app.get(`/desk/export/${name}.json`, (context) =>
      forKeeper(context, site, async (community) => ({
        text: `${JSON.stringify(await site.pages[read](community), null, 2)}\n`,
        type: "application/json",
        name: `${name}.json`,
      })),
    );
  }
}

interface SentFile {
  readonly text: string;
  readonly type: string;
  readonly name: string;
}

async function forKeeper(
  context: Context,
  site: Site,
  made: (community: string) => Promise<SentFile>,
): Promise<Response> {
  const session = await keeperOf(context, site);
  if (session === "nobody") return goTo(context, "/sign-in");
  if (session === "no keeper") return refuse(context, site, "notAllowed");
  const { text, type, name } = await made(session.guest.community);
  return context.body(text, 200, {
    "content-type": type,
    "content-disposition": `attachment; filename="${name}"`,
  });
}
