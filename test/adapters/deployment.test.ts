// The files that show how several processes are run: they set what the program reads, and reach it where the image serves.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { parseConfiguration, variableNames } from "../../adapters/configuration.ts";
import { againstSchema } from "../support/published-schema.ts";

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");
const image = read("Dockerfile");
const unit = read("adapters/deployment/witness-mark@.service");
const compose = parse(read("adapters/deployment/compose.yaml"));
const { services } = compose;
const { environment, ports, deploy, build } = services["witness-mark"];

test("the containers are given what the program reads, and with a password and a secret alone they start", () => {
  expect(Object.keys(environment).filter((name) => !variableNames.includes(name))).toEqual([]);
  const given = Object.entries<string>(environment).map(([name, value]) => [
    name,
    value
      .replaceAll(/\$\{\w+:\?[^}]*\}/gu, "0123456789abcdef0123456789abcdef")
      .replaceAll(/\$\{\w+:-\}/gu, ""),
  ]);
  expect(parseConfiguration(Object.fromEntries(given)).ok).toBe(true);
});

test("the containers are written as the Compose Specification has it", () => {
  const faultsOf = againstSchema("compose-spec");
  expect(faultsOf(compose)).toEqual([]);
  const spoilt = (service: string, changed: object) => ({
    ...compose,
    services: { ...services, [service]: { ...services[service], ...changed } },
  });
  expect(faultsOf(spoilt("database", { stop_grace_priod: "60s" }))).not.toEqual([]);
  expect(
    faultsOf(spoilt("witness-mark", { depends_on: { database: { condition: "healthy" } } })),
  ).not.toEqual([]);
  expect(faultsOf(spoilt("witness-mark", { deploy: { replicas: [3] } }))).not.toEqual([]);
});

test("there is a port outside for each container, and it leads to where the image serves", () => {
  const [, from, to, inside] = /^127\.0\.0\.1:(\d+)-(\d+):(\d+)$/u.exec(ports[0]) ?? [];
  expect(Number(to) - Number(from) + 1).toBe(deploy.replicas);
  expect(image).toContain(`PORT=${inside} `);
  expect(image).toContain(`EXPOSE ${inside}\n`);
  expect(build.context).toBe("../..");
});

test("the unit sets what the program reads, and starts what npm ci brings and npm start runs", () => {
  const set = [...unit.matchAll(/(?<=^Environment=.*)\b([A-Z_]+)=/gmu)].map(([, name = ""]) => name);
  expect(set).toEqual(["NODE_ENV", "PORT", "DATA_DIR"]);
  expect(set.slice(1).every((name) => variableNames.includes(name))).toBe(true);
  const { start } = JSON.parse(read("package.json")).scripts;
  expect(unit).toMatch(new RegExp(`^ExecStart=\\S+/node_modules/\\.bin/${start}$`, "mu"));
});

test("the image holds the sources that are started and nothing that only tests need", () => {
  const copied = [...image.matchAll(/^COPY (?!--from)(.+) \S+$/gmu)].flatMap(([, names = ""]) =>
    names.split(" "),
  );
  expect(new Set(copied)).toEqual(
    new Set(["package.json", "package-lock.json", "knowledge", "bot", "adapters"]),
  );
  expect(image).toMatch(/^CMD \["node", "adapters\/main\.ts"\]$/mu);
  expect(image).toMatch(/^USER node$/mu);
});
