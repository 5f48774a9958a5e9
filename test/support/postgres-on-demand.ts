// One Postgres for all test files, started when the first asks for it and stopped when the last has ended. They ask over a socket,
// because each test file has its own process.
import { createServer } from "node:net";
import type { TestProject } from "vitest/node";
import { type RunningPostgres, startPostgres } from "./postgres.ts";

declare module "vitest" {
  export interface ProvidedContext {
    readonly postgresOnDemandPort: number;
  }
}

export async function setup(project: TestProject): Promise<() => Promise<void>> {
  let running: Promise<RunningPostgres> | undefined;
  const server = createServer((socket) => {
    socket.on("error", () => undefined);
    running ??= startPostgres();
    running.then(
      ({ address }) => socket.end(JSON.stringify({ address })),
      (failure: unknown) => socket.end(JSON.stringify({ problem: String(failure) })),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (typeof address !== "object" || address === null) throw new Error("no port to ask for a database at");
  project.provide("postgresOnDemandPort", address.port);
  return async () => {
    await new Promise((resolve) => server.close(resolve));
    const started = await running?.catch(() => undefined);
    await started?.stop();
  };
}
