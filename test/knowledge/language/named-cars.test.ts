// A car by the name of its family is read as "car" is, whatever a handbook's cars are called.
import { expect, test } from "vitest";
import { readMessage } from "../../../knowledge/index.ts";
import { demoKnowledge, demoToday } from "../../support/demo-knowledge.ts";

test.each(["my 1980 shrike", "a shrike of 1980", "my shrike, built 1980", "mine is a 1980 shrike s"])(
  "%s: the year is the car's",
  (text) => {
    const { car } = readMessage(text, demoKnowledge().lexicon, { today: demoToday });
    const built = car.find(({ about }) => about === "built");
    expect(built).toMatchObject({ interval: { from: 12 * 1980, to: 12 * 1981 } });
  },
);

test("a car that was bought then was not built then", () => {
  const { car } = readMessage("I bought the shrike in 1984", demoKnowledge().lexicon, { today: demoToday });
  expect(car.map(({ about }) => about)).not.toContain("built");
});
