import { expect, test } from "vitest";
import { besideBooksWords, enteredAfterReading, gallonsWords, type ReadingBesideBooks, tankReadingFindings, visitsNotRecorded } from "#domain/mixing/tank-reading";
import { of } from "#domain/quantities/quantity";

const gal = (value: string | bigint) => of("gal", value);
const reading = (change: Partial<ReadingBesideBooks> = {}): ReadingBesideBooks => ({
  name: "Sprayer", found: gal(10n), inTheBooks: gal(12n), ofNoFill: gal(0n), isClean: false, capacity: gal("103.1"), openStreets: [], ...change,
});
const rulesOf = (change: Partial<ReadingBesideBooks>) => tankReadingFindings(reading(change)).map(({ rule }) => rule);

test("less than the books, all visits recorded, wants no care: the person says where it went", () => {
  expect(tankReadingFindings(reading())).toEqual([]);
  expect(rulesOf({ found: gal(12n) })).toEqual([]);
});

test("more than the books is said, and what it counts as", () => {
  const more = (change: Partial<ReadingBesideBooks>) => tankReadingFindings(reading({ found: gal("12.5"), ...change }));
  expect(more({})).toMatchObject([{ rule: "reading-above-books", level: "take-care", figure: "½ gal more than the books have.", toDo: expect.stringContaining("count difference") as string }]);
  expect(more({ isClean: true, inTheBooks: gal(0n) })).toMatchObject([{ rule: "reading-above-books", toDo: expect.stringContaining("It counts as water") as string }]);
  expect(more({ ofNoFill: gal("12.5"), inTheBooks: gal(0n) })).toMatchObject([{ rule: "reading-above-books", toDo: expect.stringContaining("Nobody knows what it is") as string }]);
});

test("more than the tank and its lines hold is a reading to look at", () => {
  expect(rulesOf({ found: gal("103.1"), inTheBooks: gal("103.1") })).toEqual([]);
  expect(rulesOf({ found: gal("103.2"), inTheBooks: gal("103.2") })).toEqual(["reading-above-capacity"]);
});

test("visits that nobody has recorded are named, five at most and each street once", () => {
  expect(visitsNotRecorded(reading({ openStreets: ["1 Elm St", "2 Oak St", "1 Elm St"] }))).toMatchObject([{ rule: "visits-not-recorded", figure: "Not recorded: 1 Elm St and 2 Oak St." }]);
  expect(visitsNotRecorded(reading({ openStreets: ["1", "2", "3", "4", "5", "6", "7"] }))).toMatchObject([{ figure: "Not recorded: 1, 2, 3, 4 and 5 and 2 more." }]);
  expect(visitsNotRecorded(reading())).toEqual([]);
});

test("a fill that came into the books after a reading of its time is not settled by it", () => {
  const fill = { number: 7, filledAt: 5, rests: [] };
  expect(enteredAfterReading(fill, [4, 6])).toMatchObject([{ rule: "fill-entered-after-reading", what: "Fill 7 came into the books after its tank was measured." }]);
  expect(enteredAfterReading(fill, [5])).toEqual([]);
  expect(enteredAfterReading(fill, [])).toEqual([]);
  expect(enteredAfterReading({ ...fill, rests: [{ fillRestId: "a", settledAt: 6, inTheBooks: gal(1n), left: gal(1n) }] }, [6])).toEqual([]);
});

test("a reading beside the books is less, more or the same", () => {
  expect([gal("9.7"), gal("12.5"), gal(12n)].map((found) => besideBooksWords(found, gal(12n)))).toEqual(["2.3 gal less than the books", "½ gal more than the books", "as in the books"]);
});

test("a tank is read in gallons, however little is in it", () => {
  expect([gal("0.25"), gal(12n), gal("30.5")].map(gallonsWords)).toEqual(["¼ gal", "12 gal", "30½ gal"]);
});
