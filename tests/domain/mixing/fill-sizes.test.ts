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
    fills: [{ madeAt: 0, mixed: 90n * MARK, parts: [{ draw: 0, volume: 30n * MARK }, { draw: 1, volume: 60n * MARK }] }],
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

test("what is in the tank is drawn from even where the truck should not carry it, and the draw is as large as it is", () => {
  const full = (draws: readonly TankDraw[], most: number, already: number) => sizeFills(draws, { ...MORE, already: BigInt(already) * MARK, most: draws.map(() => BigInt(most) * MARK) }, "full-tanks-then-a-short-one");
  expect(full([whole(15)], 70, 80)).toEqual({ kind: "sized", fills: [{ madeAt: 0, mixed: 0n, parts: [{ draw: 0, volume: 15n * MARK }] }], left: 65n * MARK });
  expect(full([whole(15), whole(15)], 10, 80)).toMatchObject({ fills: [{ mixed: 0n, parts: [{ draw: 0 }, { draw: 1 }] }], left: 50n * MARK });
  // 90 are too much for 70: the 65 that are in the tank go first.
  expect(full([whole(15), whole(90)], 70, 80)).toMatchObject({
    fills: [{ mixed: 0n, parts: [{ draw: 0, volume: 15n * MARK }] }, { mixed: 5n * MARK, parts: [{ draw: 1, volume: 70n * MARK }] }, { mixed: 20n * MARK, parts: [{ draw: 1, volume: 20n * MARK }] }],
    left: 0n,
  });
  // No room for anything more until it is used up.
  expect(full([whole(15), atWater(90)], 40, 80)).toMatchObject({ fills: [{ mixed: 0n }, { mixed: 25n * MARK, parts: [{ draw: 1, volume: 25n * MARK }] }], left: 0n });
});

test("a first fill waits for its first stop where it has no room before it; else it rides from the beginning", () => {
  const nothing = whole(0);
  const past = (mostBefore: number, mostThere: number, needed = 60) => sizeFills([nothing, whole(needed)], { ...MORE, most: [BigInt(mostBefore) * MARK, BigInt(mostThere) * MARK] }, "full-tanks-then-a-short-one");
  expect(past(56, 70)).toMatchObject({ fills: [{ madeAt: 1, mixed: 60n * MARK }] });
  expect(past(60, 70)).toMatchObject({ fills: [{ madeAt: 0, mixed: 60n * MARK }] });
  // A second fill is needed either way: the first one is made at the shop.
  expect(past(56, 56)).toMatchObject({ fills: [{ madeAt: 0, mixed: 56n * MARK }, { madeAt: 1, mixed: 4n * MARK }] });
  expect(past(0, 50)).toMatchObject({ fills: [{ madeAt: 1, mixed: 50n * MARK }, { madeAt: 1, mixed: 10n * MARK }] });
  expect(past(0, 0)).toEqual({ kind: "no-room", draw: 1 });
});

test("what is over in one fill serves a small stop by itself where no more may be brought to it", () => {
  const draws = [3n, 1n].map((halves) => ({ volume: (halves * MARK) / 2n, mayBeInterrupted: true }));
  expect(sizeFills(draws, { ...MORE, most: [2n * MARK, MARK / 4n] }, "full-tanks-then-a-short-one")).toMatchObject({ fills: [{ mixed: 2n * MARK, parts: [{ draw: 0 }, { draw: 1, volume: MARK / 2n }] }], left: 0n });
});

test("a later fill asks for no room on the way past stops that are behind it", () => {
  const sizes = sizeFills([whole(60), whole(0), whole(60)], { ...MORE, most: [60n * MARK, 30n * MARK, 60n * MARK] }, "full-tanks-then-a-short-one");
  expect(sizes).toMatchObject({ fills: [{ madeAt: 0, mixed: 60n * MARK }, { madeAt: 2, mixed: 60n * MARK }] });
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

/** Walks along the draws with the fills, by what is in the tank alone. A tank that holds more than it may is not filled. */
function walk(draws: readonly TankDraw[], most: readonly bigint[], already: bigint, sizes: Extract<FillSizes, { kind: "sized" }>): void {
  const taken = draws.map(() => 0n);
  let level = already;
  for (const { madeAt, mixed, parts } of sizes.fills) {
    const last = parts.at(-1)?.draw ?? 0;
    level += mixed;
    // On the way to each draw the tank holds what was filled less what the draws before took.
    let aboard = level;
    for (let draw = madeAt; draw <= last; draw += 1) {
      // What is over from the mark of a fill can't be left behind.
      if (mixed > 0n && aboard >= MARK) expect(aboard <= (most[draw] ?? 0n)).toBe(true);
      const own = parts.filter((part) => part.draw === draw).reduce((sum, { volume }) => sum + volume, 0n);
      aboard -= own;
      taken[draw] = (taken[draw] ?? 0n) + own;
    }
    level = aboard;
    expect(level >= 0n).toBe(true);
    expect(parts.every(({ volume }) => volume > 0n)).toBe(true);
  }
  expect(taken).toEqual(draws.map(({ volume }) => volume));
  expect(level).toBe(sizes.left);
}

const drawn = fc.record({ volume: fc.oneof(fc.constant(0n), fc.bigInt(1n, 400_000n)), mayBeInterrupted: fc.boolean(), mostMarks: fc.bigInt(0n, 60n) });

test("the stops add up to the fills and what is left, and no fill brings aboard more than there is room for, whatever the tank held and wherever room is short", () => {
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 1, maxLength: 30 }), fc.bigInt(0n, 300_000n), fc.boolean(), fc.boolean(), (tried, already, isEqual, isEven) => {
      const most = tried.map(({ mostMarks }) => (isEven ? (tried[0]?.mostMarks ?? 0n) : mostMarks) * MARK);
      const sizes = sizeFills(tried, { ...MORE, already, most }, isEqual ? "same-size-every-time" : "full-tanks-then-a-short-one");
      if (sizes.kind === "sized") walk(tried, most, already, sizes);
      // Only where less than a mark may be aboard is there no room.
      else expect((most[sizes.draw] ?? 0n) < MARK || tried.some((_one, index) => (most[index] ?? 0n) < MARK)).toBe(true);
    }),
    { numRuns: 1000 },
  );
});

test("a stop that takes nothing changes neither what is mixed nor what is left, where there is room for a whole tank", () => {
  fc.assert(
    fc.property(fc.array(drawn, { minLength: 1, maxLength: 12 }), fc.bigInt(2n, 60n), fc.bigInt(0n, 100_000n), (tried, tankMarks, already) => {
      const some = tried.filter(({ volume }) => volume > 0n);
      const full = (draws: readonly TankDraw[]) => size(draws, Number(tankMarks), "full", already);
      const [all, without] = [full(tried), full(some)];
      if (all.kind !== "sized" || without.kind !== "sized") throw new Error("There is room.");
      expect([all.left, marksOf(all)]).toEqual([without.left, marksOf(without)]);
    }),
  );
});

test("ten thousand stops take no longer than their number asks", () => {
  const draws = Array.from({ length: 10_000 }, (_unused, index) => whole(1 + (index % 7)));
  const sizes = size(draws, 100, "equal");
  expect(sizes.kind === "sized" && sizes.fills.flatMap(({ parts }) => parts).length).toBe(10_000);
});
