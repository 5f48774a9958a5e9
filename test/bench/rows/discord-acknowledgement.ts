// How soon Discord hears that a press or a command has arrived, while 200 members each hold a conversation.
import { crowdOf, playSession, remoteDoor } from "../../support/discord-session.ts";
import { figuresOfTimes } from "../figures-of-times.ts";
import type { Row } from "../row.ts";

const MEMBERS = 200;
const EVENTS = 2000;
const THINK_MILLISECONDS = 8000;
const START = 41;

export const discordAcknowledgement: Row = {
  name: "discord-acknowledgement",
  about: `event in to acknowledgement out over the loopback, ${MEMBERS} conversations at once, ${EVENTS} events`,
  starts: [START],
  measure: async () => {
    const crowd = await crowdOf(MEMBERS, 40);
    const door = await remoteDoor(crowd.double);
    const options = { start: START, events: EVENTS, troubles: false, thinkMilliseconds: THINK_MILLISECONDS };
    const { acknowledged } = await playSession(crowd, options);
    const { violations } = crowd.double.world;
    await door.close();
    await crowd.double.close();
    return [
      ...figuresOfTimes(acknowledged, 50),
      { what: "violations of Discord's rules", value: violations.length, unit: "", budget: { atMost: 0 } },
    ];
  },
};
