import { expect, test } from "vitest";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { FEED, IRON, SPRAYER } from "../../support/ticket";
import { truckStop } from "../../support/truck-stops";

const weaker = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") };
const backpack = { ...IRON, gear: { ...SPRAYER, equipmentId: "backpack", name: "Backpack" } };
const briefly = (stops: Parameters<typeof runsOfTanks>[0]) =>
  [...runsOfTanks(stops)].map(([equipmentId, runs]) => [equipmentId, runs.map(({ draws }) => draws.map(({ visitId }) => visitId).join(" "))]);

test("a run goes on over stops that are only spread, and ends with another mix", () => {
  expect(briefly([truckStop("a", [IRON]), truckStop("b", [FEED]), truckStop("c", [IRON]), truckStop("d", [weaker]), truckStop("e", [IRON])])).toEqual([["sprayer", ["a c", "d", "e"]]]);
});

test("each sprayer has runs of its own, in the order in which they are first used", () => {
  expect(briefly([truckStop("a", [backpack]), truckStop("b", [IRON]), truckStop("c", [backpack])])).toEqual([["backpack", ["a c"]], ["sprayer", ["b"]]]);
});

test("a draw knows its place, its volume and what is in it", () => {
  const [run] = runsOfTanks([truckStop("feed", [FEED]), truckStop("a", [FEED, IRON])]).get("sprayer") ?? [];
  expect(run?.draws).toMatchObject([{ stopIndex: 1, visitId: "a", finished: of("gal", 3n), treatments: [{ productId: "iron" }] }]);
  expect(run?.draws[0]?.treatments).toHaveLength(1);
});
