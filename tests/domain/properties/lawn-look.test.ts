import { expect, test } from "vitest";
import { BLOOM_SEEN, BLOOM_SEEN_WORDS, bloomOnDay, type BloomSeen, type LawnLook, lookWords } from "#domain/properties/lawn-look";
import { type CalendarDate } from "#domain/foundation/calendar-date";

const NOON = Date.UTC(2026, 3, 14, 16);
const DAY = 86_400_000;

/** A look so many days after Apr 14, 2026, at noon and so many minutes. */
function look(blooms: BloomSeen, days = 0, minutes = 0, enteredLater = 0): LawnLook {
  const seenOn = `2026-04-${String(14 + days)}` as CalendarDate;
  const at = NOON + days * DAY + minutes * 60_000;
  return { seenOn, seenAtEpochMilliseconds: at, enteredAtEpochMilliseconds: at + enteredLater, blooms };
}

const on = (day: string, ...looks: readonly LawnLook[]) => bloomOnDay(looks, day as CalendarDate);

test("without a look it is not known, and one that did not look says nothing", () => {
  expect(on("2026-04-14")).toEqual({ inBloom: "unknown", look: null });
  expect(on("2026-04-14", look("not-looked"))).toEqual({ inBloom: "unknown", look: null });
});

test("a yes stands on its day and on every day after it, until a later look says no", () => {
  const yes = look("yes");
  expect(on("2026-04-14", yes)).toEqual({ inBloom: "yes", look: yes });
  expect(on("2026-06-30", yes)).toEqual({ inBloom: "yes", look: yes });
  expect(on("2026-04-16", yes, look("not-looked", 1)).inBloom).toBe("yes");
  const no = look("no", 2);
  expect(on("2026-04-15", yes, no).inBloom).toBe("yes");
  expect(on("2026-04-16", yes, no)).toEqual({ inBloom: "no", look: no });
});

test("a no stands for the day it was seen only; after it nothing is known, and the look is still told", () => {
  const no = look("no");
  expect(on("2026-04-14", no).inBloom).toBe("no");
  expect(on("2026-04-15", no)).toEqual({ inBloom: "unknown", look: no });
  expect(on("2026-04-17", look("yes"), look("no", 2)).inBloom).toBe("unknown");
});

test("looks of later days say nothing of the day asked for", () => {
  expect(on("2026-04-13", look("yes"))).toEqual({ inBloom: "unknown", look: null });
  expect(on("2026-04-14", look("no"), look("yes", 1)).inBloom).toBe("no");
});

test("of one day the later look counts, whatever the order in which they come; of one minute the one written later", () => {
  expect(on("2026-04-14", look("yes"), look("no", 0, 30)).inBloom).toBe("no");
  expect(on("2026-04-14", look("no", 0, 30), look("yes")).inBloom).toBe("no");
  expect(on("2026-04-14", look("no"), look("yes", 0, 30)).inBloom).toBe("yes");
  expect(on("2026-04-14", look("yes", 0, 0, 1), look("no", 0, 0, 2)).inBloom).toBe("no");
  expect(on("2026-04-14", look("no", 0, 0, 2), look("yes", 0, 0, 1)).inBloom).toBe("no");
});

test("a look is said in one sentence with one period", () => {
  const said = { seenOn: "2026-04-14" as CalendarDate, minuteOfDay: 552, seenBy: "Rowan Ash" };
  expect(lookWords({ ...said, blooms: "yes", said: "clover along the walk" })).toBe("Seen in bloom on Apr 14, 2026, 9:12 am, by Rowan Ash: clover along the walk.");
  expect(lookWords({ ...said, blooms: "no", said: "Mowed this morning." })).toBe("Seen without flowers on Apr 14, 2026, 9:12 am, by Rowan Ash: Mowed this morning.");
  expect(lookWords({ ...said, blooms: "no", said: null })).toBe("Seen without flowers on Apr 14, 2026, 9:12 am, by Rowan Ash.");
  expect(lookWords({ ...said, blooms: "not-looked", said: "Gate locked!" })).toBe("Not looked at on Apr 14, 2026, 9:12 am, by Rowan Ash: Gate locked!");
});

test("each answer has its own word", () => {
  expect(new Set(BLOOM_SEEN.map((seen) => BLOOM_SEEN_WORDS[seen])).size).toBe(BLOOM_SEEN.length);
});
