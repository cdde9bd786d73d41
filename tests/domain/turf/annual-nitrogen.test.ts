import { expect, test } from "vitest";
import { compareRates } from "#domain/quantities/rate";
import { annualNitrogenRanges, annualNitrogenRangesIn, annualNitrogenRangesOf } from "#domain/turf/annual-nitrogen";

test("every range goes from low to high and names its source", () => {
  for (const range of annualNitrogenRanges) {
    expect(compareRates(range.lowest, range.highest) <= 0).toBe(true);
    expect(range.lowest.amount > 0n).toBe(true);
    expect(range.source.name).not.toBe("");
    expect(range.source.address).not.toBe("");
  }
});

test("one source says one thing of one grass in one region", () => {
  const keys = annualNitrogenRanges.map((range) => [range.grass, range.region, range.source.name].join("|"));
  expect(new Set(keys).size).toBe(keys.length);
});

test("the ranges of one grass are all of its own", () => {
  const ranges = annualNitrogenRangesOf("fine fescue");
  expect(ranges.map((range) => range.region)).toEqual(["Virginia", "Pennsylvania", "Illinois"]);
  expect(ranges.every((range) => range.grass === "fine fescue")).toBe(true);
});

test("the ranges of a grass in a state are those of its own regions, each range in one state", () => {
  expect(annualNitrogenRangesIn("IL", "tall fescue").map(({ region }) => region)).toEqual(["Illinois"]);
  expect(annualNitrogenRangesIn("FL", "bermudagrass").map(({ region }) => region)).toEqual(["north Florida", "central Florida", "south Florida"]);
  expect(annualNitrogenRangesIn("IN", "tall fescue")).toEqual([]);
  expect(annualNitrogenRangesIn("IL", "buffalograss")).toEqual([]);
  const inStates = (["FL", "NC", "VA", "GA", "IL", "PA"] as const).flatMap((state) => annualNitrogenRanges.flatMap(({ grass }) => annualNitrogenRangesIn(state, grass)));
  expect(new Set(inStates).size).toBe(annualNitrogenRanges.length);
});
