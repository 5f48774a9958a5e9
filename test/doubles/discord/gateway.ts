// Discord's gateway: identify, heartbeats, numbered events that are kept for a resume, intents that withhold what they must.

import type { Server } from "node:http";
import { WebSocket, WebSocketServer } from "ws";
import { guildAsSent, userAsSent } from "./as-sent.ts";
import { intents, type Json } from "./wire-shapes.ts";
import type { World } from "./world.ts";

interface Session {
  readonly id: string;
  readonly intents: number;
  readonly shard: readonly [number, number];
  readonly sent: { readonly number: number; readonly text: string }[];
  socket: WebSocket | undefined;
  sequence: number;
}

export interface Gateway {
  readonly address: () => string;
  /** Sends an event to the sessions it concerns; `guild` chooses the shard, none goes to the first. */
  send(event: string, guild: string | undefined, data: (intents: number) => Json | undefined): void;
  /** Cuts every socket; a session can be resumed unless it is forgotten. */
  cut(options?: { readonly code?: number; readonly forget?: boolean }): void;
  /** By performance.now(), when the last event went out. */
  readonly lastSent: () => number;
  readonly sessions: () => number;
  readonly resumed: () => number;
  readonly identified: () => number;
  close(): Promise<void>;
}

const HEARTBEAT = 41_250;

export function openGateway(world: World, server: Server): Gateway {
  const sockets = new WebSocketServer({ server });
  const sessions = new Map<string, Session>();
  let resumes = 0;
  let identifies = 0;
  let lastSent = 0;
  const address = () => {
    const at = server.address();
    return `ws://127.0.0.1:${typeof at === "object" && at !== null ? at.port : 0}`;
  };

  sockets.on("connection", (socket) => {
    let session: Session | undefined;
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: HEARTBEAT }, s: null, t: null }));
    socket.on("message", (raw) => {
      const { op, d } = JSON.parse(String(raw));
      if (op === 1) socket.send(JSON.stringify({ op: 11, d: null, s: null, t: null }));
      if (op === 2) session = identify(socket, d);
      if (op === 6) session = resume(socket, d);
    });
    socket.on("close", () => {
      if (session?.socket === socket) session.socket = undefined;
    });
  });

  function identify(socket: WebSocket, asked: Json): Session | undefined {
    identifies += 1;
    if (asked.token !== world.token) return refuse(socket, 4004);
    const wanted = Number(asked.intents);
    if (!world.hasMessageContent && (wanted & intents.messageContent) !== 0) return refuse(socket, 4014);
    const [own = 0, all = 1] = Array.isArray(asked.shard) ? asked.shard : [];
    const session: Session = {
      id: `session-${identifies}`,
      intents: wanted,
      shard: [Number(own), Number(all)],
      sent: [],
      socket,
      sequence: 0,
    };
    sessions.set(session.id, session);
    const guilds = [...world.guilds.values()].filter((guild) => isOn(session, guild.id));
    deliver(session, "READY", {
      v: 10,
      user: { ...userAsSent(world.bot), verified: true, mfa_enabled: false, email: null },
      guilds: guilds.map(({ id }) => ({ id, unavailable: true })),
      session_id: session.id,
      resume_gateway_url: address(),
      shard: session.shard,
      application: { id: world.application, flags: world.hasMessageContent ? 1 << 19 : 0 },
    });
    for (const guild of guilds) deliver(session, "GUILD_CREATE", guildAsSent(world, guild));
    return session;
  }

  function resume(socket: WebSocket, asked: Json): Session | undefined {
    const session = sessions.get(String(asked.session_id));
    if (session === undefined) {
      socket.send(JSON.stringify({ op: 9, d: false, s: null, t: null }));
      return undefined;
    }
    resumes += 1;
    session.socket = socket;
    for (const { number, text } of session.sent) if (number > Number(asked.seq)) socket.send(text);
    deliver(session, "RESUMED", {});
    return session;
  }

  function refuse(socket: WebSocket, code: number): undefined {
    socket.close(code);
    return undefined;
  }

  function deliver(session: Session, event: string, data: Json): void {
    session.sequence += 1;
    const text = JSON.stringify({ op: 0, t: event, s: session.sequence, d: data });
    session.sent.push({ number: session.sequence, text });
    if (session.sent.length > 500) session.sent.shift();
    if (session.socket?.readyState === WebSocket.OPEN) session.socket.send(text);
  }

  return {
    address,
    send(event, guild, data) {
      lastSent = performance.now();
      for (const session of sessions.values()) {
        if (guild === undefined ? session.shard[0] !== 0 : !isOn(session, guild)) continue;
        const shown = data(session.intents);
        if (shown !== undefined) deliver(session, event, shown);
      }
    },
    cut({ code, forget } = {}) {
      for (const session of sessions.values()) {
        if (code === undefined) session.socket?.terminate();
        else session.socket?.close(code);
        session.socket = undefined;
      }
      if (forget === true) sessions.clear();
    },
    lastSent: () => lastSent,
    sessions: () => [...sessions.values()].filter(({ socket }) => socket !== undefined).length,
    resumed: () => resumes,
    identified: () => identifies,
    close: () =>
      new Promise((resolve) => {
        for (const client of sockets.clients) client.terminate();
        sockets.close(() => resolve());
      }),
  };
}

/** Discord's own rule which shard a server is on. */
function isOn({ shard: [own, all] }: Session, guild: string): boolean {
  return Number((BigInt(guild) >> 22n) % BigInt(all)) === own;
}
