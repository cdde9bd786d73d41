import { expect, test } from "vitest";
import { type AftercareKind, type DueReach, type LabelAftercare } from "#domain/label/aftercare-constraint";
import { DEFAULT_AFTERCARE_ESTIMATES } from "#domain/mixing/aftercare-instants";
import { type AskedOfEarlier, beganBefore, earlierAtVisit, SURELY_WATERED_IN_AFTER_DAYS, wateredInAt } from "#domain/mixing/earlier-products";
import { type LawnWatering } from "#domain/properties/lawn-watering";
import { of } from "#domain/quantities/quantity";
import { END, earlierOf, FEED, HOUR, hoursAfterEnd, IRON, labelOf, says, START, untilState } from "../../support/aftercare-builders";

const DAY = 24 * HOUR;

/** A visit so long after the end of what came before, that takes an hour. */
function asked(afterMilliseconds: number, more: Partial<AskedOfEarlier> = {}): AskedOfEarlier {
  const at = END + afterMilliseconds;
  return { atEpochMilliseconds: at, untilEpochMilliseconds: at + HOUR, waterings: [], isSeedPlanned: false, estimates: DEFAULT_AFTERCARE_ESTIMATES, ...more };
}

const watered = (afterMilliseconds: number, more: Partial<LawnWatering> = {}): LawnWatering => ({ wateredAtEpochMilliseconds: END + afterMilliseconds, wateredBy: "sprinklers", depth: "not-stated", toldBy: "crew", ...more });

/** The facts of an earlier product that may still matter. */
function kindsLeft(label: LabelAftercare, afterMilliseconds: number, more: Partial<AskedOfEarlier> = {}): readonly AftercareKind[] {
  const product = earlierAtVisit({ label, application: earlierOf(label, END).application }, asked(afterMilliseconds, more));
  return product === undefined ? [] : (Object.keys(product.label.facts) as AftercareKind[]).filter((kind) => product.label.facts[kind] !== "none");
}

/** The last whole hour after which a label's one fact may still matter, and that it does not an hour later. */
function lastsHours(label: LabelAftercare, hours: number, more: Partial<AskedOfEarlier> = {}): boolean {
  return kindsLeft(label, (hours - 1) * HOUR, more).length > 0 && kindsLeft(label, hours * HOUR, more).length === 0;
}

test("what is over is left out of a label, and a product of which nothing runs any more is left out whole", () => {
  // Dry after two hours as estimated, no water and no rain for twelve; a dry leaf is asked at the work only.
  expect(kindsLeft(IRON, HOUR)).toEqual(["people-and-pets", "watering-not-before", "rain-that-spoils"]);
  expect(kindsLeft(IRON, 3 * HOUR)).toEqual(["watering-not-before", "rain-that-spoils"]);
  expect(kindsLeft(IRON, 12 * HOUR)).toEqual([]);
});

test("what began before the visit ended counts, though its hours are the same or cross; what began as it ended does not", () => {
  const visit = { fromEpochMilliseconds: START, untilEpochMilliseconds: END };
  const over = (startsAtEpochMilliseconds: number, endsAtEpochMilliseconds: number) => {
    const application = { startsAtEpochMilliseconds, endsAtEpochMilliseconds, postedAtEpochMilliseconds: "not-posted" } as const;
    const product = earlierAtVisit({ label: IRON, application }, { ...asked(0), atEpochMilliseconds: START, untilEpochMilliseconds: END });
    expect(product !== undefined).toBe(beganBefore(application, visit));
    return product?.appliedIn;
  };
  expect([over(START - HOUR, START), over(START - HOUR, START + 1), over(START, END), over(END - 1, END + HOUR)]).toEqual(Array.from({ length: 4 }, () => "earlier-visit"));
  expect([over(END, END), over(END, END + HOUR)]).toEqual([undefined, undefined]);
});

test("a visit and other work that both took no time, at one moment, count each other", () => {
  const moment = { fromEpochMilliseconds: START, untilEpochMilliseconds: START };
  expect([START - 1, START, START + 1].map((startsAtEpochMilliseconds) => beganBefore({ startsAtEpochMilliseconds }, moment))).toEqual([true, true, false]);
});

test("of work that crosses the visit everything is asked that its label says, but not how the lawn had to be as it went down", () => {
  const label = labelOf("Whole", { ...IRON.facts, "soil-at-application": "unknown", "mowing-before": "unknown", "seeding-before": "unknown", ...says("mowing-after", { untilLaterOf: [hoursAfterEnd(0)] }) });
  expect(kindsLeft(label, -HOUR / 2)).toEqual(["people-and-pets", "watering-not-before", "rain-that-spoils", "mowing-after"]);
  expect(kindsLeft(label, 0)).toEqual(["people-and-pets", "watering-not-before", "rain-that-spoils"]);
});

test("each reach lasts as long as its words can be read, and an hour's change of clocks does not end it early", () => {
  expect(lastsHours(labelOf("Mow", says("mowing-after", { untilLaterOf: [{ anchor: "days", from: "not-said", days: 2 }] })), 72)).toBe(true);
  expect(lastsHours(labelOf("Mow", says("mowing-after", { untilLaterOf: [{ anchor: "calendar-day", days: 1 }] })), 48)).toBe(true);
  expect(lastsHours(labelOf("Mow", says("mowing-after", { untilLaterOf: [{ anchor: "application-start", durationMinutes: 600 }] })), 10)).toBe(true);
  expect(lastsHours(labelOf("Off", says("people-and-pets", { untilLaterOf: [untilState("dust-settled"), hoursAfterEnd(4)] })), 4)).toBe(true);
  const unguessed = { estimates: { ...DEFAULT_AFTERCARE_ESTIMATES, untilDry: "unknown" as const } };
  expect(lastsHours(labelOf("Off", says("people-and-pets", { untilLaterOf: [untilState("dry")] })), 7 * 24, unguessed)).toBe(true);
});

test("seed waits for months by the longest way to read them, and for mowings all season only where seed is planned", () => {
  const seeded = (until: { readonly anchor: "calendar-month"; readonly months: number } | { readonly anchor: "mowings"; readonly count: number }) => labelOf("Pre", says("seeding-after", { intervals: [{ method: "any", until }] }));
  expect(kindsLeft(seeded({ anchor: "calendar-month", months: 4 }), 122 * DAY)).toEqual(["seeding-after"]);
  expect(kindsLeft(seeded({ anchor: "calendar-month", months: 4 }), 125 * DAY)).toEqual([]);
  expect(lastsHours(seeded({ anchor: "mowings", count: 2 }), 28 * 24)).toBe(true);
  expect(lastsHours(seeded({ anchor: "mowings", count: 2 }), 365 * 24, { isSeedPlanned: true })).toBe(true);
});

test("signs stand until their own time, and until people may come back where that is later", () => {
  const sign = (mayComeDown: Parameters<typeof says<"posting-sign">>[1]["mayComeDown"], more: Partial<LabelAftercare["facts"]> = {}) => labelOf("Signed", { ...says("posting-sign", { upBy: "at-start", mayComeDown }), ...more });
  const days = (label: LabelAftercare) => [1, 2, 3, 4, 5, 6, 7, 8].filter((day) => kindsLeft(label, day * DAY - HOUR).includes("posting-sign")).length;
  expect(days(sign({ trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }))).toBe(2);
  expect(days(sign({ trigger: "days-after-completion", daysAfter: 1, orReentryIfLater: false }))).toBe(2);
  expect(days(sign({ trigger: "elapsed", anchor: "posting", durationMinutes: 72 * 60, orReentryIfLater: false }))).toBe(3);
  expect(days(sign({ trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: true }, says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] })))).toBe(3);
  expect(days(sign({ trigger: "day-following", daysFollowing: 1, orReentryIfLater: true }, { "people-and-pets": "unknown" }))).toBe(7);
  expect(days(sign({ trigger: "state", state: "dry", orReentryIfLater: false }))).toBe(0);
  expect(days(sign({ trigger: "no-time-required" }))).toBe(0);
});

test("what counts from a sign that was put up after the work lasts as long after it", () => {
  const label = labelOf("Off", says("mowing-after", { untilLaterOf: [{ anchor: "posting", durationMinutes: 60 }] }));
  const application = { ...earlierOf(label, END).application, postedAtEpochMilliseconds: END + 2 * HOUR };
  const isLeft = (hours: number) => earlierAtVisit({ label, application }, asked(hours * HOUR)) !== undefined;
  expect([2, 3].map(isLeft)).toEqual([true, false]);
});

test("what the house takes to be over counts from the end of the work, whenever the sign was put up", () => {
  const label = labelOf("Feed", { ...says("watering-in", { by: hoursAfterEnd(24), depth: "not-stated", rain: "counts" }), "mowing-after": "unknown" });
  const application = { ...earlierOf(label, END).application, postedAtEpochMilliseconds: END + 2 * HOUR };
  const isLeft = (hours: number) => earlierAtVisit({ label, application }, asked(hours * HOUR)) !== undefined;
  expect([28 * 24 - 1, 28 * 24, 28 * 24 + 1].map(isLeft)).toEqual([true, false, false]);
  const by: DueReach = { anchor: "posting", durationMinutes: 30 * 24 * 60 };
  const due = labelOf("Feed", says("watering-in", { by, depth: "not-stated", rain: "counts" }));
  expect([30 * 24 + 1, 30 * 24 + 2].map((hours) => earlierAtVisit({ label: due, application }, asked(hours * HOUR)) !== undefined)).toEqual([true, false]);
  const unguessed = { estimates: { ...DEFAULT_AFTERCARE_ESTIMATES, untilDry: "unknown" as const } };
  const wet = labelOf("Wet", { ...says("watering-not-before", { untilLaterOf: [untilState("dry")] }), ...says("seeding-after", { intervals: [{ method: "any", until: { anchor: "mowings", count: 1 } }] }) });
  const left = (hours: number) => Object.entries(earlierAtVisit({ label: wet, application }, asked(hours * HOUR, unguessed))?.label.facts ?? {}).filter(([, fact]) => fact !== "none").map(([kind]) => kind);
  expect([7 * 24 - 1, 7 * 24, 14 * 24 - 1, 14 * 24].map(left)).toEqual([["watering-not-before", "seeding-after"], ["seeding-after"], ["seeding-after"], []]);
});

test("while a sign stands for people, so does until when they were kept off", () => {
  const label = labelOf("Signed", { ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] }), ...says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater: true } }) });
  expect(kindsLeft(label, 53 * HOUR)).toEqual(["people-and-pets", "posting-sign"]);
  expect(kindsLeft(label, 72 * HOUR)).toEqual([]);
  const alone = labelOf("Signed", { ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(2)] }), ...says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "day-following", daysFollowing: 1, orReentryIfLater: false } }) });
  expect(kindsLeft(alone, 3 * HOUR)).toEqual(["posting-sign"]);
});

test("water that was told of later than four weeks is not what watered in", () => {
  const label = labelOf("Feed", says("people-and-pets", { untilLaterOf: [untilState("watered-in-and-dry")] }));
  const long = labelOf("Feed", { ...label.facts, ...says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-month", months: 4 } }] }) });
  const waterings = [watered(36 * DAY - HOUR)];
  expect(kindsLeft(label, 36 * DAY, { waterings })).toEqual([]);
  expect(kindsLeft(long, 36 * DAY, { waterings })).toEqual(["seeding-after"]);
});

test("what nobody has said was watered in is asked for until it surely has been, or until the label's own date", () => {
  expect(SURELY_WATERED_IN_AFTER_DAYS).toBe(28);
  expect(kindsLeft(FEED, 27 * DAY)).toEqual(["people-and-pets", "watering-in", "mowing-after"]);
  expect(kindsLeft(FEED, 29 * DAY)).toEqual([]);
  const by: DueReach = { anchor: "days", from: "application-end", days: 40 };
  const late = labelOf("Late", says("watering-in", { by, depth: "not-stated", rain: "counts" }));
  expect(kindsLeft(late, 40 * DAY)).toEqual(["watering-in"]);
  expect(kindsLeft(late, 42 * DAY)).toEqual([]);
});

test("once it was watered in nothing asks for water, and what waited for it ends", () => {
  const waterings = [watered(20 * HOUR)];
  expect(kindsLeft(FEED, 21 * HOUR, { waterings })).toEqual(["people-and-pets"]);
  expect(kindsLeft(FEED, 23 * HOUR, { waterings })).toEqual([]);
  expect(earlierAtVisit({ label: FEED, application: earlierOf(FEED, END).application }, asked(21 * HOUR, { waterings }))?.wateredInAtEpochMilliseconds).toBe(END + 20 * HOUR);
});

test("the first water that does for the label counts: none before the work or after the visit, not too little, and no rain where rain does not count", () => {
  const application = earlierOf(FEED, END).application;
  const at = (waterings: readonly LawnWatering[], label = FEED) => wateredInAt(label, application, { waterings, untilEpochMilliseconds: END + 2 * DAY });
  expect(at([])).toBe("not-yet");
  expect(at([watered(-1), watered(2 * DAY + 1)])).toBe("not-yet");
  expect([at([watered(0)]), at([watered(2 * DAY)])]).toEqual([END, END + 2 * DAY]);
  expect(at([watered(5 * HOUR), watered(3 * HOUR)])).toBe(END + 3 * HOUR);
  expect(at([watered(3 * HOUR, { depth: of("in", "0.24") }), watered(4 * HOUR, { depth: of("in", "0.25") })])).toBe(END + 4 * HOUR);
  const noRain = labelOf("Feed", says("watering-in", { by: hoursAfterEnd(24), depth: "not-stated", rain: "does-not-count" }));
  expect(at([watered(3 * HOUR, { wateredBy: "rain" })], noRain)).toBe("not-yet");
  expect(at([watered(3 * HOUR, { wateredBy: "sprinklers" })], noRain)).toBe(END + 3 * HOUR);
  expect(at([watered(3 * HOUR, { wateredBy: "rain" })])).toBe(END + 3 * HOUR);
  expect(at([watered(3 * HOUR, { wateredBy: "rain", depth: of("in", "0.1") })], IRON)).toBe(END + 3 * HOUR);
});

test("a fact that nobody has read matters as long as labels ask for at most, and of seed only where seed is planned", () => {
  const unread = labelOf("Unread", Object.fromEntries(Object.keys(labelOf("x").facts).map((kind) => [kind, "unknown"])));
  expect(kindsLeft(unread, HOUR)).toEqual(["people-and-pets", "watering-not-before", "watering-in", "rain-that-spoils", "mowing-after", "posting-sign"]);
  expect(kindsLeft(unread, 10 * DAY)).toEqual(["watering-in", "mowing-after"]);
  expect(kindsLeft(unread, 20 * DAY, { waterings: [watered(DAY)] })).toEqual([]);
  expect(kindsLeft(unread, 300 * DAY)).toEqual([]);
  expect(kindsLeft(unread, 300 * DAY, { isSeedPlanned: true })).toEqual(["seeding-after"]);
  expect(kindsLeft(unread, 365 * DAY, { isSeedPlanned: true })).toEqual([]);
});

test("the same facts of one label are one object, however often they are asked for", () => {
  const part = () => earlierAtVisit({ label: IRON, application: earlierOf(IRON, END).application }, asked(3 * HOUR))?.label;
  expect(part()).toBe(part());
});
