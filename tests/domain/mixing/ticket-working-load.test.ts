import { describe, expect, test } from "vitest";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of, type Quantity } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { isSprayed } from "#domain/mixing/ticket-question";
import { finishedWorking, groundOfLoad, halfWorking, loadWorking, marksOf, type SprayAsked } from "#domain/mixing/ticket-working-load";
import { faultsOf } from "../../support/read-working";
import { IRON, LAWN, QUESTION, SPRAYER, sprayOf } from "../../support/ticket";

/** The iron on so many square feet, out of a tank of so many gallons or another size. */
function askedOf(squareFeet: bigint, tank: bigint | Quantity<"volume">, tankLoads: (typeof QUESTION)["settings"]["tankLoads"] = "same-size-every-time"): SprayAsked {
  const treatments = [{ ...IRON, gear: { ...SPRAYER, capacity: typeof tank === "bigint" ? of("gal", tank) : tank } }];
  const question = { ...QUESTION, lawns: [{ ...LAWN, area: of("sq ft", squareFeet) }], treatments, settings: { ...QUESTION.settings, tankLoads } };
  const mix = sprayOf(question);
  if (mix === undefined) throw new Error("The iron is sprayed.");
  return { mix, treatments: treatments.filter(isSprayed), settings: question.settings, area: of("sq ft", squareFeet) };
}

const stepsOf = (asked: SprayAsked, index: number) => {
  const load = asked.mix.loads[index];
  return load === undefined ? [] : loadWorking(asked, load).steps;
};

test("the finished spray, to a mark of the gauge", () => {
  expect(finishedWorking(askedOf(2050n, 100n))).toMatchObject({
    steps: ["2,050 sq ft ÷ 1,000 sq ft × 1½ gal = 3.075 gal", "3.075 gal ÷ 0.1 gal = 30.75 marks, to the nearest 31", "31 × 0.1 gal = 3.1 gal"],
    result: "3.1 gal",
  });
  expect(finishedWorking(askedOf(10n, 100n)).steps.slice(1)).toEqual(["1.92 fl oz ÷ 12.8 fl oz = 0.15 marks, to the nearest 0", "0 + 1 = 1 marks, because the nearest is more than 2% too little", "1 × 12.8 fl oz = 12.8 fl oz"]);
});

test("the next mark where the nearest is less than a label wants", () => {
  // 3,020 sq ft at 1 gal, which the iron's label wants at least.
  const asked = askedOf(3020n, 100n);
  const gear = { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "1", "gal per 1,000 sq ft") } };
  const mix = sprayOf({ lawns: [{ ...LAWN, area: asked.area }], treatments: [{ ...IRON, gear }] });
  const working = mix && finishedWorking({ ...asked, mix, treatments: [{ ...IRON, gear }] });
  expect(working?.steps.at(-2)).toBe("30 + 1 = 31 marks, because the nearest is less than the 3.02 gal that the label wants on this ground");
  expect(working && faultsOf(working)).toEqual([]);
});

describe("loads", () => {
  test("one that the tank takes", () => expect(stepsOf(askedOf(2000n, 100n), 0)).toEqual(["100 gal ÷ 0.1 gal = 1,000 marks, so a full tank is 1,000", "3 gal ÷ 0.1 gal = 30 marks", "30 ÷ 1,000 = 0.03 tanks, so one load", "30 × 0.1 gal = 3 gal"]));

  test("as equal as marks go", () => {
    // 4.5 gal are 45 marks out of a tank of 2 gal: three loads of 15.
    expect(stepsOf(askedOf(3000n, 2n), 2)).toEqual([
      "2 gal ÷ 0.1 gal = 20 marks, so a full tank is 20",
      "4½ gal ÷ 0.1 gal = 45 marks",
      "45 ÷ 20 = 2.25 tanks, so 3 loads",
      "45 ÷ 3 = 15 marks on the average; load 3 gets 15",
      "15 × 0.1 gal = 1½ gal",
    ]);
  });

  test("full tanks and a short one", () => {
    const asked = askedOf(3000n, 2n, "full-tanks-then-a-short-one");
    expect(stepsOf(asked, 0)).toEqual(["2 gal ÷ 0.1 gal = 20 marks, so a full tank is 20", "4½ gal ÷ 0.1 gal = 45 marks", "45 ÷ 20 = 2.25 tanks, so 3 loads", "20 × 0.1 gal = 2 gal"]);
    // Half a gallon is shown in fluid ounces, and so is the way to it.
    expect(stepsOf(asked, 2).at(-2)).toBe("45 − 2 × 20 = 5 marks are left for the last");
    expect(stepsOf(asked, 2).at(-1)).toBe("5 × 12.8 fl oz = 64 fl oz");
  });

  test("by whole marks, where the tank is filled between two of them", () => {
    // A tank of 15 L is 3.963 gal, 39 whole marks; 79 of them take a third load, though 7.9 gal are less than two tanks.
    const asked = askedOf(5267n, of("L", 15n));
    expect(asked.mix.loads.map(({ finished }) => toNumber(measureInUnit(finished, "gal")))).toEqual([2.7, 2.6, 2.6]);
    expect(stepsOf(asked, 0)).toEqual([
      "3.9626 gal ÷ 0.1 gal = 39.6258 marks, so a full tank is 39",
      "7.9 gal ÷ 0.1 gal = 79 marks",
      "79 ÷ 39 = 2.0256 tanks, so 3 loads",
      "79 ÷ 3 = 26.3333 marks on the average; load 1 gets 27",
      "27 × 0.1 gal = 2.7 gal",
    ]);
    for (const load of asked.mix.loads) expect(faultsOf(loadWorking(asked, load))).toEqual([]);
  });

  test("each covers its part of the ground by its marks", () => {
    const asked = askedOf(3000n, 2n, "full-tanks-then-a-short-one");
    const ground = asked.mix.loads.map((load) => toNumber(measureInUnit(groundOfLoad(asked, load), "sq ft")));
    expect(ground.map((squareFeet) => Math.round(squareFeet * 1000) / 1000)).toEqual([1333.333, 1333.333, 333.333]);
    expect(marksOf(asked.mix.finished, asked)).toBe(45n);
  });
});

test("half of the water, load by load, as the order in the tank says it", () => {
  // 3 gal less 3 fl oz of the iron.
  const one = askedOf(2000n, 100n);
  expect(halfWorking(one)).toMatchObject({
    inputs: [{ name: "Water", figure: "2.9766 gal" }],
    steps: ["Water: 2.9766 gal ÷ 2 = 1.4883 gal"],
    result: "Put in about half of this load's water (1.49 gal) and start the agitation.",
  });
  // Two full tanks of 20 marks, and 5 marks less ½ fl oz of iron, whose half is said in fluid ounces.
  const three = askedOf(3000n, 2n, "full-tanks-then-a-short-one");
  expect(halfWorking(three).steps.at(-1)).toBe("Water of load 3: 63½ fl oz ÷ 2 = 31¾ fl oz");
  expect(halfWorking(three).result).toBe(three.mix.steps[0]);
  expect([one, three].map(halfWorking).flatMap(faultsOf)).toEqual([]);
});
