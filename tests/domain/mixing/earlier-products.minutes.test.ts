// What earlier visits left on a lawn, against a second way that asks each of their statements at each minute and leaves
// nothing out for being over.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type AftercareTimeline } from "#domain/mixing/aftercare";
import { aftercareOfLawns } from "#domain/mixing/aftercare-of-lawns";
import { type DrawnHistory, type DrawnVisit, historiesDrawn, questionOf, signedHistoriesDrawn } from "../../support/aftercare-arbitraries";
import { appliedOf, labelOf } from "../../support/aftercare-builders";
import { day, valueOf } from "../../support/domain-answers";
import { asOfVisit, atItsLongest, isOfBefore } from "../../support/history-by-the-minute";
import { letGoAsJudged, rowsAsJudged } from "../../support/let-go-by-the-minute";
import { firstDifference, ROWS } from "../../support/rows-by-the-minute";
import { dateAfter, dateAt } from "../../support/wall-clock";
import { walk } from "../../support/watering-by-the-minute";

/** The lawn as the product is asked about it: at least one thing that asks for nothing is put down. */
function timelineOf({ visit, earlier, waterings, isSeedPlanned }: DrawnHistory): AftercareTimeline | undefined {
  const { visitFrom, visitUntil, zone } = visit.ground;
  const plain = appliedOf(labelOf("Plain"), { application: { startsAtEpochMilliseconds: visitFrom, endsAtEpochMilliseconds: visitUntil, postedAtEpochMilliseconds: "not-posted" } });
  const seedings = isSeedPlanned ? [{ date: day(dateAfter(dateAt(zone, visitUntil), 300)), method: "broadcast", standing: "planned" } as const] : [];
  const lawn = { name: "Front", own: [{ key: "1", products: [plain, ...visit.products] }], earlier: earlier.map((one, index) => ({ key: `visit ${index}`, ...one })), waterings, stations: visit.stations, seedings };
  return valueOf(aftercareOfLawns([lawn], questionOf(visit)))[0]?.timeline;
}

/** The same as the second way reads it. */
function readByTheMinute({ visit, earlier, ...more }: DrawnHistory, read = asOfVisit): DrawnVisit {
  const before = earlier.filter((one) => isOfBefore(one, visit.ground));
  return { ...visit, products: [...visit.products, ...before.map((one) => read(one, { ...more, ground: visit.ground }))] };
}

test.each(ROWS)("%s: forbidden at each minute at which a product of this visit or an earlier one forbids it, and at none at which no label does", (row) => {
  fc.assert(
    fc.property(historiesDrawn, (history) => {
      expect(firstDifference(row, timelineOf(history)?.steps ?? [], rowsAsJudged(readByTheMinute(history)), rowsAsJudged(readByTheMinute(history, atItsLongest)))).toBeUndefined();
    }),
    { numRuns: 80 },
  );
});

test("an earlier sign that stands until people may come back stands at just the minutes at which its words want it", () => {
  fc.assert(
    fc.property(signedHistoriesDrawn, (history) => {
      expect(firstDifference("sign", timelineOf(history)?.steps ?? [], rowsAsJudged(readByTheMinute(history)), rowsAsJudged(readByTheMinute(history, atItsLongest)))).toBeUndefined();
    }),
    { numRuns: 250 },
  );
});

test("what is still to be watered in is watered in just those stretches that the walk finds", () => {
  const seen: string[] = [];
  fc.assert(
    fc.property(historiesDrawn, (history) => {
      const { visit, rules } = letGoAsJudged(readByTheMinute(history));
      const { products, stations, ground } = visit;
      const walked = walk(products, stations, ground);
      const watering = timelineOf(history)?.watering;
      const isLetGo = rules.length > 0 && walked.kind === "none-needed";
      const kind = isLetGo ? "no-window" : walked.kind === "undecided" || walked.kind === "none-needed" ? walked.kind : walked.kind === "walked" ? "walked" : "no-window";
      seen.push(kind);
      if (walked.kind !== "walked") {
        expect(watering).toEqual({ kind });
        return;
      }
      const needed = Math.max(1, walked.knownMinutes) * 60_000;
      const longEnough = walked.stretches.filter(({ from, until }) => until - from >= needed);
      const windows = watering?.kind === "window" ? watering.windows : [];
      expect(windows.map(({ fromEpochMilliseconds: from, untilEpochMilliseconds: until }) => ({ from, until }))).toEqual(longEnough);
    }),
    { numRuns: 80 },
  );
  expect(seen).toEqual(expect.arrayContaining(["none-needed", "walked"]));
});
