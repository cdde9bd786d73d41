import { describe, expect, test } from "vitest";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { toNumber } from "#domain/quantities/rational";
import { isSprayed } from "#domain/mixing/ticket-question";
import { finishedWorking, groundOfLoad, loadWorking, marksOf, type SprayAsked } from "#domain/mixing/ticket-working-load";
import { IRON, LAWN, QUESTION, SPRAYER, sprayOf } from "../../support/ticket";

/** The iron on so many square feet, out of a tank of so many gallons. */
function askedOf(squareFeet: bigint, gallons: bigint, tankLoads: (typeof QUESTION)["settings"]["tankLoads"] = "same-size-every-time"): SprayAsked {
  const treatments = [{ ...IRON, gear: { ...SPRAYER, capacity: of("gal", gallons) } }];
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

describe("loads", () => {
  test("one that the tank takes", () => expect(stepsOf(askedOf(2000n, 100n), 0)).toEqual(["3 gal ÷ 100 gal = 0.03 tanks, so one load", "3 gal ÷ 0.1 gal = 30 marks", "30 × 0.1 gal = 3 gal"]));

  test("as equal as marks go", () => {
    // 4.5 gal are 45 marks out of a tank of 2 gal: three loads of 15.
    expect(stepsOf(askedOf(3000n, 2n), 2)).toEqual([
      "4½ gal ÷ 2 gal = 2.25 tanks, so 3 loads",
      "4½ gal ÷ 0.1 gal = 45 marks",
      "45 ÷ 3 = 15 marks on the average; load 3 gets 15",
      "15 × 0.1 gal = 1½ gal",
    ]);
  });

  test("full tanks and a short one", () => {
    const asked = askedOf(3000n, 2n, "full-tanks-then-a-short-one");
    expect(stepsOf(asked, 0)[2]).toBe("2 gal ÷ 0.1 gal = 20 marks fill the tank, to the whole mark 20");
    // Half a gallon is shown in fluid ounces, and so is the way to it.
    expect(stepsOf(asked, 2).at(-2)).toBe("45 − 2 × 20 = 5 marks are left for the last");
    expect(stepsOf(asked, 2).at(-1)).toBe("5 × 12.8 fl oz = 64 fl oz");
  });

  test("each covers its part of the ground by its marks", () => {
    const asked = askedOf(3000n, 2n, "full-tanks-then-a-short-one");
    const ground = asked.mix.loads.map((load) => toNumber(measureInUnit(groundOfLoad(asked, load), "sq ft")));
    expect(ground.map((squareFeet) => Math.round(squareFeet * 1000) / 1000)).toEqual([1333.333, 1333.333, 333.333]);
    expect(marksOf(asked.mix.finished, asked)).toBe(45n);
  });
});
