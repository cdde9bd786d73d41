import { describe, expect, test } from "vitest";
import { readLawnSize } from "#domain/properties/lawn-size";
import { of } from "#domain/quantities/quantity";

describe("square feet are turf", () => {
  test.each([["8,500 sq ft", "8500"], ["8500", "8500"], [" 12,000 SF ", "12000"], ["500", "500"], ["8,500 sq ft turf", "8500"]])("%j", (text, feet) => {
    expect(readLawnSize(text)).toEqual({ ok: true, value: { kind: "turf", area: of("sq ft", feet) } });
  });
});

test("nothing is no size", () => expect(readLawnSize("  ")).toEqual({ ok: true, value: { kind: "none" } }));

describe("a size in acres is asked about and never becomes turf by itself", () => {
  test.each(["1/4 acre", "0.2 ac", "\u00BC acre", ".25", "1/3", "20"])("%j", (text) => {
    expect(readLawnSize(text)).toMatchObject({ ok: false, refusal: { field: "lawnSize", found: text.trim(), allowed: "lot or turf", asksLotOrTurf: true } });
  });

  test("the answer decides, and so do the words lot and turf in the cell", () => {
    const quarter = of("acre", "0.25");
    expect(readLawnSize("1/4 acre", "lot")).toEqual({ ok: true, value: { kind: "lot", area: quarter } });
    expect(readLawnSize("1/4 acre", "turf")).toEqual({ ok: true, value: { kind: "turf", area: quarter } });
    expect(readLawnSize("1/4 acre lot")).toEqual({ ok: true, value: { kind: "lot", area: quarter } });
    expect(readLawnSize("0.25 acres of turf")).toMatchObject({ ok: false });
    expect(readLawnSize("0.25 acres turf")).toEqual({ ok: true, value: { kind: "turf", area: quarter } });
    expect(readLawnSize("10,000 sq ft lot")).toEqual({ ok: true, value: { kind: "lot", area: of("sq ft", 10_000n) } });
  });
});

describe("refused without a question", () => {
  test.each(["12k sq ft?", "60", "499", "about 8,000", "0", "0 sq ft", "big", "8500 lb", "-4"])("%j", (text) => {
    expect(readLawnSize(text)).toMatchObject({ ok: false, refusal: { field: "lawnSize", asksLotOrTurf: false, found: text } });
  });
});
