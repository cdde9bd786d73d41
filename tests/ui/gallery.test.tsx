import { type MockInstance, afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { Gallery } from "#ui/gallery";
import { findingWords } from "#ui/finding-mark";
import { visitWords } from "#ui/visit-mark";
import { markupOf, tagsOf, textOf } from "./read-markup";

let complaints: MockInstance<typeof console.error>;

beforeEach(() => {
  complaints = vi.spyOn(console, "error");
});

afterEach(() => {
  expect(complaints).not.toHaveBeenCalled();
  complaints.mockRestore();
});

describe("the gallery", () => {
  const markup = markupOf(<Gallery />);
  const tags = tagsOf(markup);

  test("shows every kind of finding and every standing of a visit, each with its word", () => {
    const text = textOf(markup);
    for (const word of [...Object.values(findingWords), ...Object.values(visitWords)]) expect(text).toContain(word);
    for (const level of Object.keys(findingWords)) expect(tags.some((tag) => tag.attributes["data-level"] === level)).toBe(true);
  });

  test("has no style attribute: the policy forbids them", () => {
    expect(tags.length).toBeGreaterThan(1000);
    expect(tags.filter((tag) => "style" in tag.attributes)).toEqual([]);
  });

  test("gives every id once, and every reference leads to one", () => {
    const ids = tags.flatMap((tag) => (tag.attributes.id === undefined ? [] : [tag.attributes.id]));
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
    const references = tags.flatMap(({ attributes }) =>
      ["aria-describedby", "aria-labelledby", "aria-controls", "for"].flatMap((name) => attributes[name]?.split(" ") ?? []),
    );
    expect(references.length).toBeGreaterThan(40);
    expect(references.filter((id) => !ids.includes(id))).toEqual([]);
  });

  test("every fill that a drawing refers to is defined on the page", () => {
    const ids = new Set(tags.map((tag) => tag.attributes.id));
    const fills = tags.flatMap((tag) => /^url\(#(.*)\)$/.exec(tag.attributes.fill ?? "")?.[1] ?? []);
    expect(fills.length).toBeGreaterThan(20);
    expect(fills.filter((id) => !ids.has(id))).toEqual([]);
  });

  test("every control has a name", () => {
    const labeled = new Set(tags.filter((tag) => tag.name === "label").map((tag) => tag.attributes.for));
    const nameless = tags.filter(
      ({ name, attributes }) =>
        ["input", "select", "textarea"].includes(name) &&
        attributes.type !== "hidden" &&
        !labeled.has(attributes.id ?? "") &&
        attributes["aria-label"] === undefined,
    );
    expect(nameless).toEqual([]);
  });

  test("every drawing is hidden from those who listen and has its table", () => {
    const figures = markup.split("<figure").slice(1).filter((figure) => figure.includes("Read as a table"));
    expect(figures).toHaveLength(9);
    for (const figure of figures) {
      expect(figure).toContain("<figcaption");
      expect(figure).toContain("<table");
      const drawings = tagsOf(figure.split("<details")[0] ?? "").filter((tag) => tag.name === "svg" && "height" in tag.attributes && !("x" in tag.attributes));
      expect(drawings.length).toBeGreaterThan(0);
    }
  });
});
