import { expect, test } from "vitest";
import { planTanks } from "#domain/mixing/tank-plan";
import { checkMix } from "#domain/mixing/tank-plan-checks";
import { sizeRun } from "#domain/mixing/sized-run";
import { runsOfTanks } from "#domain/mixing/tank-runs";
import { type TankPlanQuestion } from "#domain/mixing/tank-plan-question";
import { of } from "#domain/quantities/quantity";
import { IRON } from "../../support/ticket";
import { tankQuestion, truckStop } from "../../support/truck-stops";

/** What is said of the first mix of a route. */
function found(question: TankPlanQuestion) {
  const [run] = runsOfTanks(question.stops).get("sprayer") ?? [];
  const [mix] = planTanks(question).mixes;
  if (run === undefined || mix === undefined) throw new Error("Iron is sprayed.");
  const sized = sizeRun({ question, weights: question.dryWeights.map(({ amount }) => amount) }, run, { last: "clean", lineHoldsLast: true, isFirst: true });
  return checkMix(question, sized, mix, { last: null, before: undefined });
}
const loaded = (pounds: bigint, stops = [truckStop("12 Elm St", [IRON], 20_000n), truckStop("14 Elm St", [IRON], 20_000n)]) =>
  tankQuestion(stops, { truck: { name: "Truck 1", payload: of("lb", pounds), staysAboard: "counted-in-payload" } });

test("a truck that can carry full tanks has nothing said about it", () => {
  expect(found(loaded(5000n))).toEqual([]);
});

test("a fill that the payload splits says what there is room for and what it costs", () => {
  expect(found(loaded(400n))).toMatchObject([
    { visitId: null, finding: { level: "take-care", rule: "payload-splits-the-fill", figure: "The payload of 400 lb leaves room for 30 gal: 2 fills instead of 1." } },
  ]);
});

test("a truck without room for a mark holds at the mix that it can't carry", () => {
  expect(found(loaded(20n))).toMatchObject([
    { visitId: "12 Elm St", finding: { level: "hold", answerableBy: "office", rule: "no-room-for-spray", figure: "On the way to 12 Elm St it already carries all that its payload of 20 lb allows." } },
  ]);
});

test("a fill on the road asks for water only where nobody knows about it", () => {
  const stops = (water: "yes" | "no" | "unknown") => [truckStop("12 Elm St", [IRON], 60_000n, { water }), truckStop("14 Elm St", [IRON], 60_000n, { water })];
  expect(found(loaded(5000n, stops("no")))).toEqual([]);
  expect(found(loaded(5000n, stops("yes")))).toEqual([]);
  expect(found(loaded(5000n, stops("unknown")))).toMatchObject([{ visitId: "14 Elm St", finding: { rule: "water-at-stop-not-known" } }]);
});
