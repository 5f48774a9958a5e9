// A long session with everything that goes wrong in one: nothing breaks Discord's rules, nothing is written twice, and the
// door's memory does not grow.
import { crowdOf, doubled, playSession, remoteDoor } from "../../support/discord-session.ts";
import type { Row } from "../row.ts";

const MEMBERS = 20;
const EVENTS = 10_000;
const THINK_MILLISECONDS = 100;
const START = 43;

export const discordSession: Row = {
  name: "discord-session",
  about: `${EVENTS} events by ${MEMBERS} members, every fiftieth something that goes wrong with Discord`,
  starts: [START],
  measure: async () => {
    const crowd = await crowdOf(MEMBERS, 40);
    const door = await remoteDoor(crowd.double);
    let atHalf = 0;
    const half = async () => {
      atHalf = await door.heap();
    };
    await playSession(crowd, {
      start: START,
      events: EVENTS,
      troubles: true,
      thinkMilliseconds: THINK_MILLISECONDS,
      half,
    });
    const atEnd = await door.heap();
    const { violations } = crowd.double.world;
    const kinds = [...new Set(violations.map((one) => one.slice(0, 60)))].slice(0, 4).join("; ");
    const twice = doubled(crowd.double);
    await door.close();
    await crowd.double.close();
    return [
      {
        what: "violations of Discord's rules",
        value: violations.length,
        unit: "",
        budget: { atMost: 0 },
        ...(kinds === "" ? {} : { remark: kinds }),
      },
      { what: "messages written twice", value: twice, unit: "", budget: { atMost: 0 } },
      { what: "heap after half of it", value: atHalf, unit: "MB" },
      {
        what: "growth over the second half",
        value: (100 * (atEnd - atHalf)) / atHalf,
        unit: "%",
        budget: { atMost: 5 },
      },
    ];
  },
};
