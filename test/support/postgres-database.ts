// An empty database of its own for whoever asks, on the Postgres that all test files share.
import { randomBytes } from "node:crypto";
import { connect } from "node:net";
import { text } from "node:stream/consumers";
import pg from "pg";
import { inject } from "vitest";

/** The address of a new, empty database. */
export async function newPostgresDatabase(): Promise<string> {
  return newDatabaseAt(await sharedPostgres());
}

export async function newDatabaseAt(server: string): Promise<string> {
  const name = `test_${randomBytes(6).toString("hex")}`;
  await asked(server, `create database ${name}`);
  const address = new URL(server);
  address.pathname = `/${name}`;
  return address.href;
}

/** Runs one statement over a connection of its own. */
export async function asked(address: string, statement: string): Promise<readonly unknown[]> {
  const client = new pg.Client({ connectionString: address });
  await client.connect();
  try {
    return (await client.query(statement)).rows;
  } finally {
    await client.end();
  }
}

async function sharedPostgres(): Promise<string> {
  const answer = JSON.parse(await text(connect(inject("postgresOnDemandPort"), "127.0.0.1")));
  if (typeof answer.address === "string") return answer.address;
  throw new Error(answer.problem);
}
