import { expect, test } from "vitest";
import { levelsAlong } from "#domain/mixing/tank-levels";

test("what happens on the way is done on arrival, what happens at the stop is not", () => {
  const levels = levelsAlong(3, 5n, [
    { stopIndex: 0, when: "on-the-way", change: 10n },
    { stopIndex: 0, when: "at-the-stop", change: -12n },
    { stopIndex: 2, when: "at-the-stop", change: 20n },
    { stopIndex: 2, when: "at-the-stop", change: -23n },
  ]);
  expect(levels).toEqual([{ arrives: 15n, highest: 15n, leaves: 3n }, { arrives: 3n, highest: 3n, leaves: 3n }, { arrives: 3n, highest: 23n, leaves: 0n }]);
});

test("a route without stops has no levels", () => {
  expect(levelsAlong(0, 5n, [])).toEqual([]);
});
