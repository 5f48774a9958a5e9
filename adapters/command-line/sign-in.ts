/** `witness-mark sign-in`: a link to the keepers' desk, for whoever runs the program: the first owner's way in. */
import { parseConfiguration } from "../configuration.ts";
import { OutsideError } from "../errors.ts";
import { readOptions, UsageError } from "./options.ts";

export async function run(written: readonly string[]): Promise<void> {
  const given = readOptions("sign-in", written, { person: "text", name: "text", community: "text" });
  const { person = "console:owner", name = person, community = "home" } = given;
  if (person.length > 200 || name.length > 80 || !/^[\w.:-]{1,120}$/u.test(community)) {
    throw new UsageError(
      "a person of at most 200 letters, a name of at most 80 and a community are needed",
      "sign-in",
    );
  }
  const parsed = parseConfiguration(process.env);
  if (!parsed.ok) throw new OutsideError(parsed.problems.join("; "));
  const { configuration } = parsed;
  const { host, port, publicAddress = `http://${host}:${port}` } = configuration;
  const { openLog } = await import("../log.ts");
  const { openStore } = await import("../store/open-store.ts");
  const { systemClock } = await import("../clock.ts");
  const { makeSignInPath } = await import("../web/sign-in-links.ts");
  const store = await openStore(configuration, openLog({ level: "error" }));
  try {
    const guest = { person, community, standing: "owner", name } as const;
    const path = await makeSignInPath(store, systemClock(), guest);
    process.stdout.write(`${publicAddress}${path}\n`);
  } finally {
    await store.close();
  }
}
