import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type LaidSod, type LawnSeeding, newLawns, seedingWords, sownSeed, type SownSeed, youngestSod } from "#domain/properties/lawn-seeding";

const day = (text: string) => text as CalendarDate;
const NEW: SownSeed = { kind: "new-lawn", method: "unknown", date: day("2025-09-10"), standing: "done" };
const OVER: SownSeed = { kind: "overseeding", method: "slit", date: day("2026-09-10"), standing: "planned" };
const sod = (date: string, standing: "done" | "planned" = "done"): LaidSod => ({ kind: "sod", date: day(date), standing });
const ALL: readonly LawnSeeding[] = [NEW, sod("2026-03-30"), OVER];

test("sod is no seed, and overseeding makes no new lawn; done and planned stay as they are", () => {
  expect(sownSeed(ALL)).toEqual([NEW, OVER]);
  expect(newLawns(ALL)).toEqual([NEW, sod("2026-03-30")]);
});

test("the youngest sod is the last one that lies there on the day, planned sod too", () => {
  const both = [sod("2026-03-30"), sod("2026-04-20", "planned"), sod("2024-05-01")];
  expect(youngestSod(both, day("2026-04-19"))).toEqual(sod("2026-03-30"));
  expect(youngestSod(both, day("2026-04-20"))).toEqual(sod("2026-04-20", "planned"));
  expect(youngestSod(both, day("2024-04-30"))).toBeUndefined();
  expect(youngestSod([NEW, OVER], day("2026-12-01"))).toBeUndefined();
});

test("a seeding is said with its method, and sod without one", () => {
  expect([...ALL, { ...OVER, method: "broadcast" as const }].map(seedingWords)).toEqual([
    "New lawn from seed, method not known",
    "New lawn from sod",
    "Overseeding of a lawn that stands, slit seeded",
    "Overseeding of a lawn that stands, broadcast",
  ]);
});
