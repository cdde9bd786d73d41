import { expect, test } from "vitest";
import { putDownOf } from "#domain/mixing/put-down";
import { makeMixTicket } from "#domain/mixing/mix-ticket";
import { ticketRate } from "#domain/mixing/stated-rate";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { valueOf } from "../../support/crew";
import { FEED, IRON, LAWN, QUESTION, SPRAYER, SPREADER } from "../../support/ticket";
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

test("what is left of a tank goes down nowhere, and how much it is is said", () => {
  const strength = (value: string) => rateOf("product-volume-per-spray-volume", value, "fl oz per gal");
  const stated = ticketRate(strength("2"), { ...IRON.use, rates: { basis: "product-volume-per-spray-volume", low: strength("1"), high: strength("2") } }, SPRAYER);
  // 100 sq ft take 0.15 of the 0.2 gal that are mixed with 0.4 fl oz.
  const tool = { name: "tenth cup", mark: exactly("fl oz", "0.1") };
  expect(putDownOf(truckStop("a", [{ ...IRON, ...stated, tool }], 100n).mixes)).toEqual([
    { words: "19.2 fl oz with 0.3 fl oz Rustwater Iron", gearName: "Sprayer", how: "one load, 25.6 fl oz in all, of which 6.4 fl oz are left", lawns: [{ lawn: "Front", treatedArea: "100 sq ft", amount: "19.2 fl oz" }] },
  ]);
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
