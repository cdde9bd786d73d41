import { describe, expect, test } from "vitest";
import {
  careFor,
  closedBy,
  noteOf,
  shown,
  shownApart,
  shownRain,
  undecidedBy,
  unreadLimit,
  worstVerdict,
} from "#domain/weather/spray-reasons";

const authority = { basis: "label", source: "label, page 2" } as const;
const closed = closedBy("rain", authority, "Rain.", "Alpha");
const care = careFor("gusts", authority, "Gusts.");
const note = noteOf("delta-t", authority, "Delta T.");

describe("reasons", () => {
  test("closed before take-care before open; a note decides nothing", () => {
    expect(worstVerdict([])).toBe("open");
    expect(worstVerdict([note])).toBe("open");
    expect(worstVerdict([note, care])).toBe("take-care");
    expect(worstVerdict([care, closed, note])).toBe("closed");
  });
  test("carry who says so, and the product when it is a product's limit", () => {
    expect(closed).toEqual({
      verdict: "closed",
      rule: "rain",
      basis: "label",
      source: "label, page 2",
      productName: "Alpha",
      isUndecided: false,
      sentence: "Rain.",
    });
    expect("productName" in care).toBe(false);
  });
  test("what can't be decided closes, and says that it is undecided", () => {
    expect(undecidedBy("wind-high", authority, "Unknown.")).toMatchObject({ verdict: "closed", isUndecided: true });
    expect(unreadLimit("rain", "Alpha", "rainfast time")).toMatchObject({
      verdict: "closed",
      isUndecided: true,
      basis: "label",
      sentence: "The rainfast time of Alpha has not been entered from its label.",
    });
  });
  test.each([
    [90, "90"],
    [89.96000000000001, "89.96"],
    [0.126, "0.13"],
    [10.5, "10.5"],
  ])("%d is shown as %s", (value, text) => expect(shown(value)).toBe(text));
  test.each([
    [90.004, 90, ["90.004", "90"]],
    [10.0041942, 10, ["10.004", "10"]],
    [93.2, 90, ["93.2", "90"]],
    [90, 90, ["90", "90"]],
    [89.9999999, 90, ["89.9999999", "90"]],
  ])("%d beside %d gets digits until the two differ", (value, other, words) => expect(shownApart(value, other)).toEqual(words));
  test.each([
    [0, "0"],
    [0.004, "0.004"],
    [0.126, "0.13"],
  ])("rain of %d in that fell is never shown as none: %s", (inches, text) => expect(shownRain(inches)).toBe(text));
});
