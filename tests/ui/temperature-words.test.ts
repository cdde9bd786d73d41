import { describe, expect, test } from "vitest";
import { type TemperaturesToWrite } from "#application/temperatures/temperatures-to-write";
import { addDays, monthWords } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type DayTemperatures } from "#domain/turf/day-temperatures";
import { caresOfDays, meanWords, spansWords, spanWords, understoodSentence } from "../../app/(office)/settings/temperature-words";
import { day } from "../support/domain-answers";

const first = day("2026-03-31");
const at = (index: number, high = 650, low = 400): DayTemperatures => ({ date: addDays(first, index), scale: "fahrenheit", highTenths: high, lowTenths: low });
const UNDERSTOOD: TemperaturesToWrite = {
  source: "Airfield",
  figuresFrom: "Its page.",
  given: [at(0), at(1), at(2, 705, 38), at(3)],
  period: { from: first, through: addDays(first, 3) },
  gaps: [],
  kept: [],
  inUse: "Airfield",
  added: [],
  replaced: [],
  same: [],
};
const spoken = (understood: TemperaturesToWrite) => understoodSentence(understood).map((part) => (typeof part === "string" ? part : part.fact)).join("");
const cares = (change: Partial<TemperaturesToWrite>) => caresOfDays({ ...UNDERSTOOD, ...change }).map(({ level, what, figure = "" }) => `${level}: ${what} ${figure}`.trim());

test("what was understood is said month by month, with the range of highs and of lows", () => {
  expect(spoken(UNDERSTOOD)).toBe("4 days of Airfield, from Its page: March 2026, 1 day, highs 65 °F, lows 40 °F; April 2026, 3 days, highs 65 to 70.5 °F, lows 3.8 to 40 °F.");
});

describe("what wants care", () => {
  test("is nothing where all days are new, in a row, and of the source in use or the first of all", () => {
    expect(cares({ added: UNDERSTOOD.given })).toEqual([]);
    expect(cares({ inUse: null })).toEqual([]);
  });

  test("names every day that is replaced, and the figures of six", () => {
    const replaced = [0, 1, 2, 5, 6, 7, 9].map((index) => ({ before: at(index), after: at(index, 660) }));
    const [said = ""] = cares({ replaced });
    expect(said).toContain("take-care: 7 days kept before are replaced. Mar 31, 2026 to Apr 2, 2026, Apr 5, 2026 to Apr 7, 2026 and Apr 9, 2026.");
    expect(said).toContain("High and low of Mar 31, 2026: 65 and 40 °F, now 66 and 40 °F;");
    expect(said).toContain("; and 1 more.");
    expect(cares({ replaced: replaced.slice(0, 1) })[0]).toMatch(/^take-care: 1 day kept before is replaced\. .* now 66 and 40 °F\.$/u);
  });

  test("says another source, days kept already and gaps", () => {
    expect(cares({ inUse: "Campus" })).toEqual(["take-care: Growth is drawn by another source, Campus."]);
    expect(cares({ same: [at(0), at(2)] })).toEqual(["note: 2 days kept already with the same figures. Mar 31, 2026 and Apr 2, 2026: nothing is written for them."]);
    expect(cares({ gaps: [{ from: day("2026-04-01"), through: day("2026-04-02") }] })).toEqual(["note: Days between the first and the last are missing. Apr 1, 2026 to Apr 2, 2026."]);
  });
});

test("days, spans, months and means in words", () => {
  expect([daysWords(1), daysWords(0), monthWords(12)]).toEqual(["1 day", "0 days", "December"]);
  expect([spanWords({ from: first, through: first }), spansWords([])]).toEqual(["Mar 31, 2026", ""]);
  expect(meanWords(20)).toBe("68.0 °F");
});
