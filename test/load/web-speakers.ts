// Visitors of the pages, each with a cookie and an address of their own, and a forum that sends signed posts. Both send again what was
// not answered, the very same, as browsers and forums do.
import { Webhook } from "standardwebhooks";
import { framedVisitor } from "../../adapters/web/visitor.ts";
import type { Said, Speaker } from "./speaker.ts";

const PAUSE = 500;

/** A visitor of the process at `address`. */
export async function webSpeaker(address: string, number: number): Promise<Speaker> {
  const forwarded = `10.${(number >> 16) & 255}.${(number >> 8) & 255}.${number & 255}`;
  const page = await fetch(`${address}/`, { headers: { "x-forwarded-for": forwarded } });
  const secret = /visitor=([^;]+)/u.exec(page.headers.get("set-cookie") ?? "")?.[1] ?? "";
  const text = await page.text();
  const token = /name="token" value="([^"]*)"/u.exec(text)?.[1] ?? "";
  const place = framedVisitor(secret)?.conversation ?? "";
  let turn = "";
  return {
    door: "web",
    person: place,
    conversation: place,
    async say(words, patience) {
      const body = new URLSearchParams({ token, turn, text: words });
      const headers = { cookie: `visitor=${secret}`, "x-wanted": "turn", "x-forwarded-for": forwarded };
      const send = () => fetch(`${address}/said`, { method: "POST", body, headers, redirect: "manual" });
      const { outcome, answer } = await insisted(send, patience);
      turn = /id="turn-([^"]+)"/u.exec(answer)?.[1] ?? turn;
      return { id: undefined, outcome };
    },
  };
}

/** The posts of one thread of the forum `source`, delivered to the process at `address`. */
export function forumSpeaker(address: string, source: string, secret: string, number: number): Speaker {
  const author = { id: `a${number}` };
  const thread = `t${number}`;
  const webhook = new Webhook(secret);
  let posts = 0;
  let deliveries = 0;
  return {
    door: "forum",
    person: `forum:${source}:${author.id}`,
    conversation: `forum:${source}:${thread}`,
    async say(words, patience) {
      posts += 1;
      const id = `p${number}-${posts}`;
      const body = JSON.stringify({ id, thread, author, text: words });
      const send = () => {
        deliveries += 1;
        const delivery = `d${number}-${deliveries}`;
        const at = new Date();
        const headers = {
          "content-type": "application/json",
          "webhook-id": delivery,
          "webhook-timestamp": `${Math.floor(at.getTime() / 1000)}`,
          "webhook-signature": webhook.sign(delivery, at, body),
        };
        return fetch(`${address}/webhook/${source}`, { method: "POST", body, headers });
      };
      return { id, outcome: (await insisted(send, patience)).outcome };
    },
  };
}

async function insisted(
  send: () => Promise<Response>,
  patience: number,
): Promise<{ readonly outcome: Said["outcome"]; readonly answer: string }> {
  const end = performance.now() + patience;
  for (;;) {
    try {
      const response = await send();
      const answer = await response.text();
      if (response.status === 200) return { outcome: "answered", answer };
    } catch {
      // The process is down, or the connection was cut; it is sent again.
    }
    if (performance.now() > end) return { outcome: "silent", answer: "" };
    await new Promise((resolve) => setTimeout(resolve, PAUSE));
  }
}
