import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { exactly, fromExactAmount } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { type TimeAsked, timeWords, timeWorking } from "#domain/mixing/ticket-working-time";
import { asNominal, type LawnPace, NO_PACE } from "#domain/mixing/time-on-lawn";
import { faultsOf } from "../../support/read-working";

const LANES: LawnPace = { kind: "swath-and-speed", swath: of("ft", 10n), distancePerMinute: of("ft", 200n) };
const TIMED: LawnPace = { kind: "timed-ground", groundPerMinute: of("sq ft", 500n) };
const lawn = (name: string, squareFeet: bigint): TimeAsked["lawns"][number] => ({ letter: name.slice(0, 1), name, treatedArea: of("sq ft", squareFeet) });
const FRONT = lawn("Front", 2000n);

function asked(more: Partial<TimeAsked> & { readonly pace?: LawnPace } = {}): TimeAsked {
  const { pace = LANES, ...rest } = more;
  return { lawns: [FRONT], gear: { name: "Sprayer", pace }, passes: 1, settings: { minutesPerThousandSquareFeet: 4 }, ...rest };
}

function workingOf(more: Parameters<typeof asked>[0] = {}) {
  const working = timeWorking(asked(more));
  if (working === undefined) throw new Error("The time is worked out.");
  expect(faultsOf(working)).toEqual([]);
  expect(working.result).toBe(timeWords(asked(more)));
  return working;
}

describe("by lanes", () => {
  test("a lawn as if it were square, with a turn between two lanes", () => {
    // By hand: 44.72 ft by 44.72 ft is 5 lanes of 10 ft, 223.6 ft at 200 ft a minute and 4 turns of 5 s: 1.118 + 0.333 min.
    expect(workingOf()).toMatchObject({
      title: "Time on the lawn with Sprayer",
      inputs: [{ name: "F Front", figure: "2,000 sq ft" }, { name: "Passes", figure: "1" }, { name: "Swath", figure: "10 ft", from: "the pace of the calibration" }, { name: "In a minute", figure: "200 ft" }, { name: "A turn", figure: "5 s" }],
      steps: [
        "F Front: √ 2,000 sq ft = 44.7214 ft, the length of a lane",
        "44.7214 ft ÷ 10 ft = 4.4721 lanes, so 5 in a pass",
        "5 × 44.7214 ft = 223.607 ft to walk",
        "5 − 1 = 4 turns",
        "223.607 ft ÷ 200 ft × 1 min = 1.118 min",
        "4 × 5 s ÷ 60 s × 1 min = 0.33333 min",
        "1.118 min + 0.33333 min = 1.4514 min, up to whole minutes",
      ],
      result: "About 2 min, at the pace of the calibration, with 4 turns",
    });
  });

  test("two passes walk and turn twice, several lawns each their own lanes", () => {
    const { steps, result } = workingOf({ lawns: [FRONT, lawn("Back", 64n)], passes: 2 });
    expect(steps).toEqual(expect.arrayContaining(["2 × 5 × 44.7214 ft = 447.214 ft to walk", "2 × 5 − 2 = 8 turns", "B Back: √ 64 sq ft = 8 ft, the length of a lane", "2 × 1 × 8 ft = 16 ft to walk", "447.214 ft + 16 ft = 463.214 ft in all", "8 + 0 = 8 turns in all"]));
    expect(result).toBe("About 3 min, at the pace of the calibration, with 8 turns");
  });

  test("one lane has no turn", () => expect(workingOf({ lawns: [lawn("Back", 64n)], pace: asNominal(LANES) })).toMatchObject({ steps: [expect.anything(), "8 ft ÷ 10 ft = 0.8 lanes, so 1 in a pass", "1 × 8 ft = 8 ft to walk", "8 ft ÷ 200 ft × 1 min = 0.04 min, up to whole minutes"], result: "About 1 min, at the nominal pace, which nobody has timed" }));
});

test("by ground that was timed as a whole, in each pass", () => {
  expect(workingOf({ pace: TIMED, lawns: [FRONT, lawn("Back", 1500n)], passes: 2 })).toMatchObject({
    steps: ["2,000 sq ft + 1,500 sq ft = 3,500 sq ft", "2 × 3,500 sq ft ÷ 500 sq ft × 1 min = 14 min, up to whole minutes"],
    result: "About 14 min, at the pace of the calibration",
  });
});

test("by the company's minutes without a pace, whatever the passes", () => {
  for (const passes of [1, 2] as const) {
    expect(workingOf({ pace: NO_PACE, passes })).toMatchObject({ steps: ["2,000 sq ft ÷ 1,000 sq ft × 4 min = 8 min, up to whole minutes"], result: "About 8 min, by the company’s figure; no pace is on file" });
  }
});

test("spot work and ground of which nothing is treated have none", () => {
  const spots = { ...FRONT, spot: { shareBasisPoints: 1000, treatable: of("sq ft", 20_000n) } };
  expect(timeWorking(asked({ lawns: [spots] }))).toBeUndefined();
  expect(timeWords(asked({ lawns: [spots] }))).toBe("Not worked out: the whole lawn is walked for its spots");
  expect(timeWorking(asked({ lawns: [lawn("Front", 0n)] }))).toBeUndefined();
  expect(timeWords(asked({ lawns: [lawn("Front", 0n)] }))).toBe("none");
});

test("a reader comes to every line, whatever the lawns and the pace", () => {
  const area = fc.bigInt(1n, 90_000n);
  const pace = fc.oneof(
    fc.record({ swath: fc.bigInt(5n, 300n), speed: fc.bigInt(100n, 9000n) }).map(({ swath, speed }): LawnPace => ({ kind: "swath-and-speed", swath: exactly("ft", { numerator: swath, denominator: 10n }), distancePerMinute: exactly("ft", { numerator: speed, denominator: 7n }) })),
    fc.bigInt(10n ** 6n, 10n ** 9n).map((amount): LawnPace => ({ kind: "timed-ground", groundPerMinute: fromExactAmount("area", { numerator: amount * 2_322_576n, denominator: 10n ** 6n }) })),
    fc.constant(NO_PACE),
  );
  fc.assert(
    fc.property(fc.array(area, { minLength: 1, maxLength: 3 }), pace, fc.constantFrom(1 as const, 2 as const), (areas, one, passes) => {
      expect(workingOf({ lawns: areas.map((size, index) => lawn(["Front", "Back", "Side"][index] ?? "", size)), pace: one, passes }).steps.length).toBeGreaterThan(0);
    }),
  );
});
