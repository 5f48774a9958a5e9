// A wire to a database that can be cut: what a network, a restart or a stopped server does to a connection, without touching the
// server that other tests use.
import { connect, createServer, type Socket } from "node:net";

export interface Wire {
  /** The database's address by way of this wire. */
  readonly address: string;
  /** Breaks every connection and refuses new ones. */
  cut(): void;
  /** Lets nothing through in either direction, and says nothing. */
  freeze(): void;
  mend(): void;
  /** The next answer to a statement that contains `words` is lost and the connection breaks: it was carried out, nobody was told. */
  loseAnswerTo(words: string): void;
  close(): Promise<void>;
}

export async function wireTo(database: string): Promise<Wire> {
  const { hostname, port } = new URL(database);
  const pairs = new Set<readonly [Socket, Socket]>();
  let state: "whole" | "cut" | "frozen" = "whole";
  let fatal: string | undefined;

  const server = createServer((near) => {
    if (state === "cut") return near.destroy();
    const far = connect(Number(port), hostname);
    const pair = [near, far] as const;
    pairs.add(pair);
    let isDoomed = false;
    near.on("data", (bytes) => {
      if (fatal !== undefined && bytes.includes(fatal)) {
        isDoomed = true;
        fatal = undefined;
      }
      far.write(bytes);
    });
    far.on("data", (bytes) => {
      if (isDoomed) for (const end of pair) end.destroy();
      else near.write(bytes);
    });
    for (const [end, other] of [pair, [far, near] as const]) {
      end.on("error", () => undefined);
      end.on("close", () => {
        other.destroy();
        pairs.delete(pair);
      });
      if (state === "frozen") end.pause();
    }
    return undefined;
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const own = server.address();
  const address = new URL(database);
  address.port = typeof own === "object" && own !== null ? `${own.port}` : "";

  const each = (act: (end: Socket) => void) => {
    for (const pair of pairs) for (const end of pair) act(end);
  };
  return {
    address: address.href,
    cut() {
      state = "cut";
      each((end) => end.destroy());
    },
    freeze() {
      state = "frozen";
      each((end) => end.pause());
    },
    mend() {
      state = "whole";
      each((end) => end.resume());
    },
    loseAnswerTo(words) {
      fatal = words;
    },
    async close() {
      each((end) => end.destroy());
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
