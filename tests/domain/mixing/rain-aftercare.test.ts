import { expect, test } from "vitest";
import { spoilingRain } from "#domain/mixing/rain-aftercare";
import { of } from "#domain/quantities/quantity";
import { appliedOf, CHICAGO, earlierOf, END, HOUR, hoursAfterEnd, IRON, labelOf, says, START } from "../../support/aftercare-builders";

const asOf = { epochMilliseconds: START, timeZone: CHICAGO, unitSystem: "us" } as const;

test("any rain, or rain from a depth on, until the label's own end", () => {
  const heavy = labelOf("Slowfeed", says("rain-that-spoils", { within: hoursAfterEnd(48), from: of("in", "1") }));
  expect(spoilingRain([appliedOf(IRON), appliedOf(heavy)], asOf)).toMatchObject([
    { endsAtEpochMilliseconds: END + 12 * HOUR, from: "any", words: "Any rain before Saturday, May 2, 2026, 4 am spoils Ferrox Foliar." },
    {
      endsAtEpochMilliseconds: END + 48 * HOUR,
      from: String(of("in", "1").amount),
      words: "Rain of 1 in or more before Sunday, May 3, 2026, 4 pm spoils Slowfeed.",
    },
  ]);
});

test("rain within 1 day spoils for a whole 24 h and not only until midnight", () => {
  const label = labelOf("Slowfeed", says("rain-that-spoils", { within: { anchor: "days", from: "not-said", days: 1 }, from: "any" }));
  expect(spoilingRain([appliedOf(label)], asOf)).toMatchObject([{ endsAtEpochMilliseconds: END + 24 * HOUR }]);
});

test("what no longer runs is left out", () => {
  expect(spoilingRain([earlierOf(IRON, START - 12 * HOUR)], asOf)).toEqual([]);
  expect(spoilingRain([earlierOf(IRON, START - 11 * HOUR)], asOf)).toHaveLength(1);
});
