/** One message from a page: to the bot, into the transcript, and to whoever has the conversation open. */
import type { Bot, Knowledge, Standing } from "../../bot/index.ts";
import { maskSerials } from "../../knowledge/index.ts";
import type { Said } from "./said.ts";
import type { Site } from "./site.ts";
import { addTurn, lightened, type Turn } from "./transcript.ts";

export interface Speaker {
  readonly conversation: string;
  readonly person: string;
  readonly community?: string;
  readonly standing?: Standing;
  readonly name?: string;
}

/** The turn it made. Rejects only when the store does; nothing was kept then. */
export async function converse(
  {
    bot,
    store,
    clock,
    drawings,
    knowledge,
  }: Pick<Site, "bot" | "store" | "clock" | "drawings" | "knowledge">,
  speaker: Speaker,
  said: Said,
  photographs: readonly string[] = [],
): Promise<Turn> {
  const reply = await receiveFrom(bot, speaker, said, photographs);
  const turn: Turn = {
    id: said.id,
    at: clock.milliseconds(),
    said: masked(knowledge(), said.shown),
    photographs: [...photographs],
    part: reply.summary.part,
    blocks: lightened(reply.blocks, drawings),
  };
  await addTurn(store, speaker.conversation, speaker.person, turn);
  return turn;
}

/** A chassis number is kept by nobody in clear, as in the case itself. */
function masked(known: readonly Knowledge[], words: string): string {
  return known.reduce((shown, { handbook }) => maskSerials(shown, handbook.cars).text, words);
}

function receiveFrom(bot: Bot, speaker: Speaker, said: Said, photographs: readonly string[]) {
  const { conversation, person, community, standing, name } = speaker;
  return bot.receive({
    conversation,
    from: person,
    id: said.id,
    isPrivate: true,
    ...(said.text === undefined ? {} : { text: said.text }),
    ...(said.answer === undefined ? {} : { answer: said.answer }),
    ...(community === undefined ? {} : { community }),
    ...(standing === undefined ? {} : { standing }),
    ...(name === undefined ? {} : { name }),
    ...(photographs.length === 0 ? {} : { photographs: [...photographs] }),
  });
}
