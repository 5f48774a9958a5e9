/** What Prometheus is told: requests by route, messages answered, what was refused, who listens. Never a name, address or word. */
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";

export interface Metrics {
  /** `route`: as it is written in the program, never as it was asked for. */
  request(route: string, method: string, status: number, seconds: number): void;
  refused(why: "rate" | "size" | "forgery" | "replay" | "forged form" | "sign-in"): void;
  message(door: "web" | "embed" | "webhook"): void;
  text(): Promise<string>;
  readonly contentType: string;
}

export interface Gauges {
  readonly isReady: () => boolean;
  readonly listeners: () => number;
}

/** A registry of its own, so that two servers in one process do not meet. */
export function openMetrics({ isReady, listeners }: Gauges): Metrics {
  const registry = new Registry();
  collectDefaultMetrics({ register: registry });
  const registers = [registry];
  const requests = new Histogram({
    name: "witness_mark_http_request_seconds",
    help: "time to answer a request",
    labelNames: ["route", "method", "status"] as const,
    buckets: [0.001, 0.0025, 0.005, 0.01, 0.02, 0.05, 0.1, 0.25, 0.5, 1, 2.5],
    registers,
  });
  const refused = new Counter({
    name: "witness_mark_refused_total",
    help: "requests that were refused",
    labelNames: ["why"] as const,
    registers,
  });
  const messages = new Counter({
    name: "witness_mark_messages_total",
    help: "messages answered",
    labelNames: ["door"] as const,
    registers,
  });
  gauge(registry, "witness_mark_ready", "whether messages are taken", () => (isReady() ? 1 : 0));
  gauge(registry, "witness_mark_listeners", "pages that listen for new turns", listeners);
  return {
    request: (route, method, status, seconds) =>
      requests.observe({ route, method, status: `${status}` }, seconds),
    refused: (why) => refused.inc({ why }),
    message: (door) => messages.inc({ door }),
    text: () => registry.metrics(),
    contentType: registry.contentType,
  };
}

function gauge(registry: Registry, name: string, help: string, value: () => number): void {
  const made: Gauge = new Gauge({ name, help, registers: [registry], collect: () => made.set(value()) });
}
