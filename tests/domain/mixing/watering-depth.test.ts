import { describe, expect, test } from "vitest";
import { type WateringDepth } from "#domain/label/aftercare-constraint";
import { appliedOf, CHICAGO, earlierOf, HOUR, labelOf, onLabel, says, START } from "../../support/aftercare-builders";
import { constraintsOf } from "#domain/mixing/applied-product";
import { commonDepth } from "#domain/mixing/watering-depth";
import { of } from "#domain/quantities/quantity";
import { type Authority } from "#domain/weather/spray-limits";

const inches = (least: string, most = "none"): WateringDepth => ({ least: of("in", least), most: most === "none" ? "none" : of("in", most) });
const wants = (productName: string, depth: WateringDepth | "not-stated", authority: Authority = onLabel) =>
  appliedOf(labelOf(productName, says("watering-in", { by: "not-stated", depth, rain: "counts" }, authority)));
const common = (...products: ReturnType<typeof wants>[]) => commonDepth(constraintsOf(products, "watering-in"), { timeZone: CHICAGO, unitSystem: "us" });

test("the largest least under the smallest most", () => {
  expect(common(wants("A", inches("0.25")), wants("B", inches("0.5", "1")), wants("C", inches("0.125", "0.75")))).toEqual({
    kind: "depth",
    depth: inches("0.5", "0.75"),
  });
});
test("a label without a depth goes with the others", () => {
  expect(common(wants("A", "not-stated"), wants("B", inches("0.25")))).toEqual({ kind: "depth", depth: inches("0.25") });
  expect(common(wants("A", "not-stated"))).toEqual({ kind: "not-stated" });
  expect(common()).toEqual({ kind: "not-stated" });
});
// Half an inch at once after a grub insecticide (University of Kentucky, July 3, 2018); at most a quarter inch after lawn
// fertilizer (Suffolk County, New York).
test("a grub insecticide and a capped feed have none, and the hold names both", () => {
  const cap = { basis: "handbook", source: "Suffolk County: water in with at most 1/4 in" } as const;
  const answer = common(wants("Grubclear", inches("0.5", "1")), wants("Evenfeed 18", inches("0.125", "0.25"), cap));
  expect(answer).toMatchObject({
    kind: "no-common-depth",
    finding: {
      level: "hold",
      answerableBy: "office",
      source: "handbook",
      figure: "Grubclear: at least ½ in; Evenfeed 18: at most ¼ in.",
      about: ["Grubclear", "Evenfeed 18"],
    },
  });
  expect(common(wants("A", inches("0.5")), wants("B", inches("0.1", "0.25")))).toMatchObject({ finding: { answerableBy: "nobody" } });
});
describe("with what is down already", () => {
  const down = (productName: string, depth: WateringDepth) => earlierOf(wants(productName, depth).label, START - HOUR);
  const day = "(put down Friday, May 1, 2026)";
  test("it is watered in first, or this visit's product comes after it", () => {
    expect(common(down("Grubclear", inches("0.5")), wants("Evenfeed 18", inches("0.125", "0.25")))).toMatchObject({
      finding: { level: "hold", answerableBy: "nobody", toDo: `Have Grubclear ${day} watered in before this visit and write it down in a look at the lawn, or put Evenfeed 18 down after it has been.` },
    });
  });
  test("alone it holds nothing up: the least that all take comes first", () => {
    expect(common(down("Grubclear", inches("0.5")), down("Evenfeed 18", inches("0.125", "0.25")))).toMatchObject({
      kind: "no-common-depth",
      thirstiest: { applied: { label: { productName: "Grubclear" } } },
      finding: {
        level: "take-care",
        what: `Grubclear ${day} wants more water than Evenfeed 18 ${day} allows.`,
        toDo: `Have the lawn watered with at most ¼ in first and write it down in a look at the lawn. Then have Grubclear ${day} watered in.`,
      },
    });
  });
});
test("the same depths in millimeters meet exactly", () => {
  const metric: WateringDepth = { least: of("mm", "6.35"), most: of("mm", "6.35") };
  expect(common(wants("A", inches("0.25", "0.25")), wants("B", metric))).toEqual({ kind: "depth", depth: inches("0.25", "0.25") });
});
