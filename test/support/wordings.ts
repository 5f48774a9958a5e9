// Wordings in short: "the {seller,man} {,always }says so" stands for each of its four sentences. A table of what people say stays readable, and
// no way of saying it is left out.

/** Every sentence that the lines of a table stand for: of each pair of braces one choice, which may be empty. */
export function wordings(table: string): readonly string[] {
  return table
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "")
    .flatMap(sentencesOf);
}

function sentencesOf(line: string): readonly string[] {
  const choice = /\{([^{}]*)\}/.exec(line);
  if (choice === null) return [line.replaceAll(/ +/g, " ").trim()];
  const [whole, choices = ""] = choice;
  return choices
    .split(",")
    .flatMap((chosen) =>
      sentencesOf(line.slice(0, choice.index) + chosen + line.slice(choice.index + whole.length)),
    );
}
