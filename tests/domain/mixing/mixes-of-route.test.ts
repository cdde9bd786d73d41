import { expect, test } from "vitest";
import { mixesOfRoute } from "#domain/mixing/mixes-of-route";
import { type SizedRun, sizeRun } from "#domain/mixing/sized-run";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { IRON } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

const weaker = { ...IRON, rate: rateOf("product-volume-per-area", "1", "fl oz per 1,000 sq ft") };
const kelp = { ...IRON, productId: "kelp", label: { ...IRON.label, productName: "Kelp Tonic" } };
const question = tankQuestion([truckStop("a", [weaker]), truckStop("b", [kelp]), truckStop("c", [weaker])]);

/** Runs whose lines are left as they are, so that each keeps 3 gal. */
function mixes(lettersOf: (runs: readonly SizedRun[]) => ReadonlyMap<SizedRun, readonly string[]>) {
  const asked = { ...question, settings: { ...question.settings, lineAtTheEnd: "left-as-it-is" as const } };
  const weights = question.stops.map(() => 0n);
  const runs = (runsOfTanks(question.stops).get("sprayer") ?? []).map((run, index) => sizeRun({ question: asked, weights }, run, { last: "clean", below: [], made: [], lineHoldsLast: true, isFirst: index === 0, leavesRest: false }));
  return mixesOfRoute(asked, { runs, rinsateAtEnds: [0n, of("gal", 4n).amount] }, lettersOf(runs)).map(({ mix }) => mix);
}

test("a mix is named after its fills", () => {
  const named = mixes((runs) => new Map(runs.map((run, index) => [run, [["A"], ["B", "C"], ["D", "E", "F"]][index] ?? []])));
  expect(named.map(({ name }) => name)).toEqual(["fill A", "fills B and C", "fills D, E and F"]);
});

test("a mix says what rinsate is aboard when it ends, what water rides along to push it out, and which of its sites have none", () => {
  expect(mixes(() => new Map()).map(({ end }) => end.rinsateAboard)).toEqual([of("gal", 0n), of("gal", 4n), of("gal", 0n)]);
  expect(mixes(() => new Map()).map(({ end }) => end.waterAlong)).toEqual([of("gal", 0n), of("gal", 0n), of("gal", 0n)]);
  expect(mixes(() => new Map()).map(({ end }) => end.sitesWithoutWater)).toEqual([["a"], ["b"], ["c"]]);
});

test("what is left goes to the last stop and to later stops of the same mix, as far as they have room, and room counts once", () => {
  const [first, second, third] = mixes((runs) => new Map(runs.map((run) => [run, ["A"]])));
  // Planned at half of the highest rate, a and c take 3 gal each; b has room for a third of its 3 gal.
  expect(first?.end.way).toEqual({ sites: [{ visitId: "a", mix: of("gal", 3n) }], toShop: of("gal", 0n) });
  expect(second?.end.way).toEqual({ sites: [{ visitId: "b", mix: of("gal", 1n) }], toShop: of("gal", 2n) });
  expect(third?.end.way).toEqual({ sites: [{ visitId: "c", mix: of("gal", 3n) }], toShop: of("gal", 0n) });
});
