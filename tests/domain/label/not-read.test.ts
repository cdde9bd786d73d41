import { expect, test } from "vitest";
import { notReadOnLabel } from "#domain/label/not-read";

test("a fact that nobody has read holds, names the product and says to read its label", () => {
  expect(notReadOnLabel("distance-to-water-not-read", "Barrier Nine", "how far from water it stays")).toEqual({
    level: "hold",
    answerableBy: "office",
    rule: "distance-to-water-not-read",
    source: "label",
    what: "It has not been entered from the label of Barrier Nine how far from water it stays.",
    toDo: "Read the label and enter what it states, or that it states nothing.",
    about: ["Barrier Nine"],
  });
});

test("what it bears on and where it would be written are said beside it", () => {
  const more = { figure: "It shares a tank with Rustwater Iron.", citation: "label of Barrier Nine, grassy weeds" };
  expect(notReadOnLabel("tank-partners-not-read", "Barrier Nine", "from what it is kept apart", more)).toMatchObject(more);
});
