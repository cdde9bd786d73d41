import { expect, test } from "vitest";
import { hold, note, takeCare } from "#domain/foundation/finding";
import { causesOf } from "#domain/foundation/finding-causes";

const heat = (product: string, lawn: string) =>
  hold("nobody", { rule: "too-hot", source: "label", what: `Too hot for ${product} on ${lawn}.`, figure: "84 against 80.", about: [product, lawn] });

test("findings of one cause are one, with the names that differ listed and each place once", () => {
  const causes = causesOf([
    { at: "a", finding: heat("Iron", "Front") },
    { at: "b", finding: heat("Iron", "Back") },
    { at: "b", finding: heat("Iron", "Side") },
  ]);
  expect(causes).toMatchObject([{ what: "Too hot for Iron on Front, Back and Side.", figure: "84 against 80.", at: ["a", "b"] }]);
});

test("more than three names are counted", () => {
  const causes = causesOf(["A", "B", "C", "D"].map((lawn) => ({ at: lawn, finding: heat("Iron", lawn) })));
  expect(causes[0]?.what).toBe("Too hot for Iron on A, B and 2 more.");
});

test("a figure that differs is left to the stops", () => {
  const late = (figure: string) => hold("office", { rule: "late", source: "house", what: "Too late.", figure, about: [] });
  expect(causesOf([{ at: "a", finding: late("9 min") }, { at: "b", finding: late("4 min") }])[0]?.figure).toBeNull();
});

test("the gravest come first, and within a level what meets most; other words are another cause", () => {
  const words = (rule: string, what: string) => ({ rule, source: "house" as const, what, about: [] });
  const causes = causesOf([
    { at: "a", finding: note(words("n", "A note.")) },
    { at: "a", finding: takeCare(words("c", "One.")) },
    { at: "a", finding: takeCare(words("c", "Two.")) },
    { at: "b", finding: takeCare(words("c", "Two.")) },
    { at: "b", finding: hold("office", words("h", "A hold.")) },
  ]);
  expect(causes.map(({ what }) => what)).toEqual(["A hold.", "Two.", "One.", "A note."]);
});

test("an empty name is no name, and nothing found is no cause", () => {
  expect(causesOf([{ at: "a", finding: note({ rule: "r", source: "house", what: "As it is.", about: [""] }) }])[0]?.what).toBe("As it is.");
  expect(causesOf([])).toEqual([]);
});
