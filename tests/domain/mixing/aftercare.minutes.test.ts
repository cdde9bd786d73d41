// The rows of the timeline, minute by minute, against a second way that reads each label statement by what the wall shows.
import fc from "fast-check";
import { expect, test } from "vitest";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { questionOf, visitsDrawn } from "../../support/aftercare-arbitraries";
import { valueOf } from "../../support/domain-answers";
import { rowsAsJudged } from "../../support/let-go-by-the-minute";
import { firstDifference, ROWS } from "../../support/rows-by-the-minute";

test.each(ROWS)("%s: forbidden at just those minutes at which the words of some product forbid it", (row) => {
  fc.assert(
    fc.property(visitsDrawn, (visit) => {
      expect(firstDifference(row, valueOf(aftercareTimeline(questionOf(visit))).steps, rowsAsJudged(visit))).toBeUndefined();
    }),
    { numRuns: 120 },
  );
});
