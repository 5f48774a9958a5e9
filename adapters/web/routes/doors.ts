/** The page that tells a forum how to link, to embed and to send posts. */
import type { Hono } from "hono";
import { boxExample, webhookExample } from "../door-examples.ts";
import { doors } from "../phrases.ts";
import { table } from "../render/blocks.ts";
import { html } from "../render/markup.ts";
import { showPage } from "../respond.ts";
import type { Site } from "../site.ts";

export function doorRoutes(app: Hono, site: Site): void {
  app.get("/doors", (context) => {
    const statuses = table({
      kind: "table",
      caption: doors.statuses,
      head: doors.statusHead,
      rows: doors.statusRows,
    });
    const main = html`<h1>${doors.title}</h1><p>${doors.lead}</p>
<h2>${doors.link}</h2><p>${doors.linkText}</p>
<h2>${doors.box}</h2><p>${doors.boxText}</p>
<pre tabindex="0"><code>${boxExample(site.address)}</code></pre>
<h2>${doors.webhook}</h2><p>${doors.webhookText}</p>
<pre tabindex="0"><code>${webhookExample(site.address)}</code></pre>
<p>${doors.fields}</p>${statuses}`;
    return showPage(context, site, { title: doors.title, description: doors.lead, place: "doors", main });
  });
}
