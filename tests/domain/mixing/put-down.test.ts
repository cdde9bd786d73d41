import { expect, test } from "vitest";
import { putDownOf } from "#domain/mixing/put-down";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { FEED, IRON, LAWN, QUESTION, SPREADER } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

test("what is spread says weight and setting, what is sprayed volume and products, each lawn its own", () => {
  expect(putDownOf(truckStop("a", [FEED, IRON]).mixes)).toEqual([
    {
      words: "5 lb Harrowgate 32",
      gearName: "Spreader",
      how: "setting 14, two passes at half rate, crosswise",
      lawns: [{ lawn: "Front", treatedArea: "2,000 sq ft", amount: "5 lb" }],
    },
    { words: "3 gal with 3 fl oz Rustwater Iron", gearName: "Sprayer", how: "one load", lawns: [{ lawn: "Front", treatedArea: "2,000 sq ft", amount: "3 gal" }] },
  ]);
});

test("of a spray goes down what the ground takes, and not what a load for it alone comes to on the gauge", () => {
  const [iron] = putDownOf(truckStop("a", [IRON], 2500n).mixes);
  expect(iron?.words).toBe("3\u00BE gal with 4 fl oz Rustwater Iron");
  expect(iron?.lawns.map(({ amount }) => amount)).toEqual(["3\u00BE gal"]);
});

test("without a calibration there is no setting, in one pass it says so, and several loads are counted", () => {
  const feed = { ...FEED, gear: { ...SPREADER, setting: "not-calibrated" as const } };
  expect(putDownOf(truckStop("a", [feed]).mixes)[0]?.how).toBe("two passes at half rate, crosswise");
  const once = makeMixTicket({ ...QUESTION, treatments: [FEED], settings: { ...QUESTION.settings, granularPasses: "one-with-overlap" } });
  expect(putDownOf(valueOf(once).mixes)[0]?.how).toBe("setting 14, one pass with overlap");
  expect(putDownOf(truckStop("a", [IRON], 100_000n).mixes)[0]?.how).toBe("2 loads");
});

test("a lawn on which nothing goes down is left out", () => {
  const other = { ...LAWN, zoneId: "ditch", name: "Ditch", area: of("sq ft", 0n) };
  const ticket = makeMixTicket({ ...QUESTION, lawns: [LAWN, other], treatments: [{ ...FEED, zoneIds: ["front", "ditch"] }] });
  expect(putDownOf(valueOf(ticket).mixes)[0]?.lawns.map(({ lawn }) => lawn)).toEqual(["Front"]);
});
