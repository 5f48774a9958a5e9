import sharp from "sharp";
import { expect, test } from "vitest";
import { type OpenSite, type Reader, readerAt, webSite } from "./web-site.ts";

async function photograph(): Promise<Buffer> {
  const pixels = { create: { width: 60, height: 40, channels: 3, background: "#806040" } } as const;
  const gps = { IFD0: { Make: "Camera" }, IFD3: { GPSLatitude: "51/1 30/1 0/1", GPSLatitudeRef: "N" } };
  return sharp(pixels).withExif(gps).jpeg().toBuffer();
}

/** Sends the form of the chat page with files, as a browser does. */
async function upload(
  site: OpenSite,
  reader: Reader,
  files: readonly Buffer[],
  text = "",
): Promise<Response> {
  const { text: page } = await reader.get("/");
  const token = /name="token" value="([^"]+)"/u.exec(page)?.[1] ?? "";
  const body = new FormData();
  body.set("token", token);
  body.set("text", text);
  for (const file of files) body.append("photographs", new File([new Uint8Array(file)], "mirror.jpg"));
  const cookie = [...reader.cookies].map(([name, value]) => `${name}=${value}`).join("; ");
  return fetch(`${site.address}/said`, { method: "POST", body, headers: { cookie }, redirect: "manual" });
}

test("a photograph is taken in, shown, and says no longer where and with what it was taken", async () => {
  const site = await webSite();
  const reader = readerAt(site.address);
  const sent = await photograph();
  expect(sent.includes("Exif")).toBe(true);
  const answer = await upload(site, reader, [sent], "which door mirror is this?");
  expect(answer.status).toBe(303);
  const { text } = await reader.get("/");
  const path = /src="(\/photographs\/[^"]+)"/u.exec(text)?.[1] ?? "none";
  const shown = await fetch(`${site.address}${path}`);
  expect(shown.headers.get("content-type")).toBe("image/jpeg");
  const bytes = Buffer.from(await shown.arrayBuffer());
  expect(bytes.includes("Exif")).toBe(false);
  expect((await sharp(bytes).metadata()).width).toBe(60);
});

test("what is no photograph, too many or too large is refused with a reason, and nothing is said", async () => {
  const site = await webSite();
  const reader = readerAt(site.address);
  const one = await photograph();
  const svg = Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>`);
  const refused = await upload(site, reader, [svg], "a mirror with <three> screws");
  expect(refused.status).toBe(422);
  const page = await refused.text();
  expect(page).toContain("That is no photograph I can open.");
  expect(page).toMatch(
    /<textarea id="text"[^>]* autofocus>\na mirror with &lt;three&gt; screws<\/textarea>/u,
  );
  expect((await upload(site, reader, [one, one, one, one, one], "mirror")).status).toBe(422);
  expect((await upload(site, reader, [Buffer.alloc(9_000_000)], "mirror")).status).toBe(422);
  expect((await upload(site, reader, [Buffer.alloc(36_000_000)], "mirror")).status).toBe(413);
  expect((await reader.get("/")).text).not.toContain('class="turn"');
});
