import fc from "fast-check";
import { expect, test } from "vitest";
import { type FillSizes, mixedFor, sizeFills, type TankDraw } from "#domain/mixing/fill-sizes";
import { fromAmount } from "#domain/quantities/quantity";
import { exactly } from "#domain/quantities/exact-quantity";

const MARK = 2000n;
const MORE = { mark: fromAmount("volume", MARK), already: 0n };
const whole = (marks: number): TankDraw => ({ volume: BigInt(marks) * MARK, mayBeInterrupted: false });
const atWater = (marks: number): TankDraw => ({ volume: BigInt(marks) * MARK, mayBeInterrupted: true });
const size = (draws: readonly TankDraw[], tank: number, how: "equal" | "full", already = 0n): FillSizes =>
  sizeFills(draws, { ...MORE, already, most: draws.map(() => BigInt(tank) * MARK) }, how === "equal" ? "same-size-every-time" : "full-tanks-then-a-short-one");
const marksOf = (sizes: FillSizes) => (sizes.kind === "sized" ? sizes.fills.map(({ mixed }) => Number(mixed) / Number(MARK)) : sizes.kind);

test("all in one fill where the tank holds it, and nothing is left", () => {
  expect(size([whole(30), whole(60)], 100, "equal")).toEqual({
    kind: "sized",
    fills: [{ mixed: 90n * MARK, parts: [{ draw: 0, volume: 30n * MARK }, { draw: 1, volume: 60n * MARK }] }],
    left: 0n,
  });
});

test("full tanks reach as far as whole stops allow; the same size every time evens them out", () => {
  const draws = [whole(30), whole(30), whole(30), whole(30)];
  expect(marksOf(size(draws, 100, "full"))).toEqual([90, 30]);
  expect(marksOf(size(draws, 100, "equal"))).toEqual([60, 60]);
});

test("water at the stops saves a fill", () => {
  expect(marksOf(size([whole(60), whole(60), whole(60)], 100, "full"))).toEqual([60, 60, 60]);
  expect(marksOf(size([atWater(60), atWater(60), atWater(60)], 100, "full"))).toEqual([100, 80]);
  expect(marksOf(size([atWater(60), atWater(60), atWater(60)], 100, "equal"))).toEqual([90, 90]);
});

test("a stop that takes more than the tank is sprayed in several fills", () => {
  expect(marksOf(size([whole(250)], 100, "full"))).toEqual([100, 100, 50]);
  expect(marksOf(size([whole(250)], 100, "equal"))).toEqual([84, 84, 82]);
});

test("what is in the tank is used first; where it is enough nothing is mixed", () => {
  expect(size([whole(30)], 100, "equal", 40n * MARK)).toMatchObject({ fills: [{ mixed: 0n }], left: 10n * MARK });
  expect(marksOf(size([whole(70), whole(80)], 100, "equal", 40n * MARK))).toEqual([30, 80]);
});

test("a stop under a mark takes a whole one, and what is over serves the next", () => {
  const half = { volume: MARK / 2n, mayBeInterrupted: false };
  expect(size([half, half, half], 1, "full")).toMatchObject({ fills: [{ mixed: MARK }, { mixed: MARK }], left: MARK / 2n });
});

test("marks that are no whole canonical units add up without a mark too much", () => {
  // A hundredth of a gallon is 24,226,635,417.6 canonical units.
  const mark = exactly("gal", "0.01");
  const draws = [24_226_635_418n, 24_226_635_418n, 48_453_270_835n].map((volume) => ({ volume, mayBeInterrupted: false }));
  const sizes = sizeFills(draws, { mark, already: 0n, most: draws.map(() => 10n ** 12n) }, "full-tanks-then-a-short-one");
  expect(sizes).toMatchObject({ fills: [{ mixed: 96_906_541_671n }], left: 0n });
});

test("draws together go up to the mark, with half a unit allowed for each", () => {
  const mark = fromAmount("volume", 10n);
  expect([0n, 1n, 10n, 11n, 12n].map((taken) => mixedFor(taken, 1, mark))).toEqual([0n, 10n, 10n, 20n, 20n]);
  expect([11n, 12n].map((taken) => mixedFor(taken, 2, mark))).toEqual([11n, 20n]);
});

test("a tank that may hold less than a mark has no room", () => {
  expect(sizeFills([whole(3)], { ...MORE, most: [MARK - 1n] }, "same-size-every-time")).toEqual({ kind: "no-room", draw: 0 });
});

test("a fill that rides past a place where less may be aboard is kept down for it", () => {
  const sizes = sizeFills([whole(30), whole(30)], { ...MORE, most: [100n * MARK, 40n * MARK] }, "full-tanks-then-a-short-one");
  expect(marksOf(sizes)).toEqual([30, 30]);
});

interface TriedStop {
  readonly halves: number;
  readonly atWater: boolean;
}

function placesToFill(stops: readonly TriedStop[]): readonly number[] {
  const places: number[] = [];
  let begin = 0;
  for (const { halves, atWater: isAtWater } of stops) {
    if (begin > 0) places.push(begin);
    for (let within = 1; isAtWater && within < halves; within += 1) places.push(begin + within);
    begin += halves;
  }
  return places;
}

/** Every amount at every place, tried: the fewest fills, and of those the least left over. Stops in half marks, fills in whole ones. */
function fewestAndLeast(stops: readonly TriedStop[], tankMarks: number): readonly [fills: number, leftHalves: number] {
  const end = stops.reduce((total, { halves }) => total + halves, 0);
  const places = new Set([0, ...placesToFill(stops)]);
  let best: readonly [number, number] = [Infinity, Infinity];
  const go = (at: number, level: number, fills: number): void => {
    if (fills > best[0]) return;
    if (at === end) {
      if (fills < best[0] || level < best[1]) best = [fills, level];
      return;
    }
    if (level > 0) go(at + 1, level - 1, fills);
    if (!places.has(at)) return;
    for (let full = level + 2; full <= 2 * tankMarks; full += 2) go(at + 1, full - 1, fills + 1);
  };
  go(0, 0, 0);
  return best;
}

/** Every choice of places with so many fills, each for what is used up to the next one: the smallest that the largest fill can be. */
function smallestLargest(stops: readonly TriedStop[], tankMarks: number, fills: number): number {
  const end = stops.reduce((total, { halves }) => total + halves, 0);
  const places = placesToFill(stops);
  let best = Infinity;
  for (let choice = 0; choice < 2 ** places.length; choice += 1) {
    const chosen = places.filter((_place, index) => Math.floor(choice / 2 ** index) % 2 === 1);
    if (chosen.length !== fills - 1) continue;
    let [from, mixed, largest] = [0, 0, 0];
    for (const to of [...chosen, end]) {
      const upTo = Math.ceil(to / 2);
      largest = 2 * upTo - from > 2 * tankMarks ? Infinity : Math.max(largest, upTo - mixed);
      [from, mixed] = [to, upTo];
    }
    best = Math.min(best, largest);
  }
  return best;
}

test("no way of filling has fewer fills, leaves less, or has a smaller largest fill", () => {
  const stop = fc.record({ halves: fc.integer({ min: 1, max: 6 }), atWater: fc.boolean() });
  fc.assert(
    fc.property(fc.array(stop, { minLength: 1, maxLength: 4 }), fc.integer({ min: 4, max: 6 }), (stops, tankMarks) => {
      const draws = stops.map(({ halves, atWater: mayBeInterrupted }) => ({ volume: (BigInt(halves) * MARK) / 2n, mayBeInterrupted }));
      const [fills, leftHalves] = fewestAndLeast(stops, tankMarks);
      for (const how of ["equal", "full"] as const) {
        const sizes = size(draws, tankMarks, how);
        if (sizes.kind !== "sized") throw new Error("There is room.");
        expect([sizes.fills.length, Number((sizes.left * 2n) / MARK)]).toEqual([fills, leftHalves]);
        if (how === "equal") expect(Math.max(...(marksOf(sizes) as number[]))).toBe(smallestLargest(stops, tankMarks, fills));
      }
    }),
    { numRuns: 300 },
  );
});

test("the stops add up to the fills and what is left, and no tank holds more than it may", () => {
  const draw = fc.record({ volume: fc.bigInt(1n, 400_000n), mayBeInterrupted: fc.boolean() });
  fc.assert(
    fc.property(fc.array(draw, { minLength: 1, maxLength: 40 }), fc.bigInt(2n, 60n), fc.bigInt(0n, 100_000n), fc.boolean(), (draws, tankMarks, before, isEqual) => {
      const most = tankMarks * MARK;
      const already = before < most ? before : most;
      const sizes = size(draws, Number(tankMarks), isEqual ? "equal" : "full", already);
      if (sizes.kind !== "sized") throw new Error("There is room.");
      const taken = draws.map(() => 0n);
      let level = already;
      for (const { mixed, parts } of sizes.fills) {
        level += mixed;
        expect(level <= most).toBe(true);
        for (const { draw: index, volume } of parts) {
          taken[index] = (taken[index] ?? 0n) + volume;
          level -= volume;
        }
        expect(level >= 0n).toBe(true);
      }
      expect(taken).toEqual(draws.map(({ volume }) => volume));
      expect(level).toBe(sizes.left);
    }),
  );
});

test("ten thousand stops take no longer than their number asks", () => {
  const draws = Array.from({ length: 10_000 }, (_unused, index) => whole(1 + (index % 7)));
  const sizes = size(draws, 100, "equal");
  expect(sizes.kind === "sized" && sizes.fills.flatMap(({ parts }) => parts).length).toBe(10_000);
});
