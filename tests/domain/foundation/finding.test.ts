import { expect, test } from "vitest";
import { eachFindingOnce, gravestFirst, hold, holdsOf, note, takeCare } from "#domain/foundation/finding";

const words = (rule: string) => ({ rule, source: "house", what: `${rule}.`, about: [] }) as const;
const findings = [note(words("a")), takeCare(words("b")), hold("office", words("c")), takeCare(words("d")), hold("nobody", words("e"))];

test("the gravest stand first, and those of one level stay in their order", () => {
  expect(gravestFirst(findings).map(({ rule }) => rule)).toEqual(["c", "e", "b", "d", "a"]);
});

test("what was said once is not said again; the same words about something else are", () => {
  const about = (lawn: string) => note({ ...words("a"), about: [lawn] });
  expect(eachFindingOnce([about("Front"), takeCare(words("b")), about("Back"), about("Front")])).toEqual([about("Front"), takeCare(words("b")), about("Back")]);
});

test("a hold says who may answer it", () => {
  expect(holdsOf(findings).map(({ rule, answerableBy }) => [rule, answerableBy])).toEqual([
    ["c", "office"],
    ["e", "nobody"],
  ]);
  expect(holdsOf([note(words("a"))])).toEqual([]);
});
