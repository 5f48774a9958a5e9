import { expect, test } from "vitest";
import { formatInterval } from "../../../knowledge/calendar/date-text.ts";
import { readDemo } from "../../support/read-demo.ts";
import { carInWords } from "../../support/reading-in-words.ts";

test.each([
  ["Shrike Mk II Touring from 1984", ["model shrike-ii", "trim touring", "built 1984"]],
  ["it is a federal car", ["market america"]],
  ["I live in the USA", []],
  ["one owner from new", ["one-owner"]],
  ["documented from new", ["documented-from-new"]],
  ["barn find, no history", ["history-unknown"]],
  ["fitted a new one in 95", ["known-replaced"]],
  ["never been replaced", []],
  ["bought a loose one at an autojumble", ["loose"]],
  ["it is still on my car", []],
])("the car is described in ordinary words: %s", (text, expected) => {
  expect(carInWords(readDemo(text)).toSorted()).toEqual([...expected].toSorted());
});

test.each([
  ["my car is WS-1234", "1234"],
  ["chassis WS 1174 here", "1174"],
  ["ws1174", "1174"],
  ["chassis number is 1174", "1174"],
  ["VIN 1M8GDM9AXKP042788 thanks", "042788"],
  ["serial no. 0887", "0887"],
])("a serial is masked wherever it could be seen: %s", (text, secret) => {
  const reading = readDemo(text, "door-mirror");
  expect(JSON.stringify(reading)).not.toContain(secret);
  expect(reading.shownText).toContain("\u2022");
  expect(reading.car.some((finding) => finding.about === "serial")).toBe(true);
});

test("a serial between two documented cars was built between them", () => {
  const [serial] = readDemo("WS-1200").car.filter((finding) => finding.about === "serial");
  expect(serial?.interval === undefined ? "" : formatInterval(serial.interval)).toBe(
    "10 July to 22 December 1981",
  );
});

test("a higher serial is never built earlier", () => {
  const starts = [120, 500, 900, 1300, 1700, 1990].map((number) => {
    const text = `WS-${String(number).padStart(4, "0")}`;
    const serial = readDemo(text).car.find((finding) => finding.about === "serial");
    return serial?.interval?.from ?? Number.NaN;
  });
  expect(starts).toEqual([...starts].toSorted((one, other) => one - other));
});
