import { expect, test } from "vitest";
import { typedPhotographs } from "../../../adapters/terminal/typed-photographs.ts";

test("a photograph is typed by its path, alone or among words", () => {
  expect(typedPhotographs("photograph ./spoiler.jpg")).toEqual({ text: "", paths: ["./spoiler.jpg"] });
  expect(typedPhotographs("rough inside, photograph spoiler.JPG.")).toEqual({
    text: "rough inside.",
    paths: ["spoiler.JPG"],
  });
  expect(typedPhotographs("photo ~/one.png and two.webp; square tips")).toEqual({
    text: "square tips",
    paths: ["~/one.png", "two.webp"],
  });
  expect(typedPhotographs('which part is this? photographs: "my photos/a b.jpeg", /tmp/c')).toEqual({
    text: "which part is this?",
    paths: ["my photos/a b.jpeg", "/tmp/c"],
  });
});

test("words about photographs are no paths, and stay as they were typed", () => {
  for (const text of [
    "what photographs should I ask for?",
    "I have a photograph of the door mirror.",
    "photographs",
    "; photograph",
  ]) {
    expect(typedPhotographs(text)).toEqual({ text, paths: [] });
  }
});
