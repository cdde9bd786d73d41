import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { checkLawns } from "#domain/mixing/lawn-checks";
import { type ConstraintOf } from "#domain/label/aftercare-constraint";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, holdsOf, IRON, LAWN, QUESTION, type rulesOf, ticketOf, withFeed } from "../../support/ticket";

const count = (rule: string, question: Parameters<typeof rulesOf>[0]) => ticketOf(question).findings.filter((finding) => finding.rule === rule).length;

test("a grass that is only assumed wants care, once for a lawn, whatever goes on it", () => {
  expect(count("grass-assumed", { lawns: [{ ...LAWN, grassesAssumed: true }], treatments: [FEED, IRON] })).toBe(1);
  expect(count("grass-assumed", {})).toBe(0);
});

test("a grass that nobody entered holds, unless every label takes any turfgrass", () => {
  const lawns = [{ ...LAWN, grasses: [] }];
  expect(holdsOf({ lawns })).toEqual(["hold grass-not-on-file"]);
  expect(holdsOf({ lawns, ...withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } }) })).toEqual([]);
});

test("an area that came from another list wants care; one that was measured or entered here does not", () => {
  expect(count("area-assumed", { lawns: [{ ...LAWN, areaOrigin: "imported" }] })).toBe(1);
  expect(count("area-assumed", { lawns: [{ ...LAWN, areaOrigin: "entered" }] })).toBe(0);
});

test("one product planned twice on a lawn holds, once; on two lawns it does not", () => {
  const again = { ...FEED, line: 7 };
  expect(count("same-product-twice", { treatments: [FEED, again, { ...FEED, line: 8 }] })).toBe(1);
  expect(holdsOf({ treatments: [FEED, again] })).toContain("hold same-product-twice");
  const lawns = [LAWN, { ...LAWN, zoneId: "back", name: "Back" }];
  expect(count("same-product-twice", { lawns, treatments: [FEED, { ...again, zoneIds: ["back"] }] })).toBe(0);
});

test("new sod wants a look where the label keeps its product off new seed that long", () => {
  const withSeed = { ...BARRIER.use.aftercare.facts, "seeding-before": { kind: "seeding-before", within: { anchor: "calendar-day", days: 60 }, labelWords: "Not on new seed for 60 days.", basis: "label", source: "label of Barrier Nine" } } as const;
  const barrier = { ...BARRIER, use: { ...BARRIER.use, aftercare: { ...BARRIER.use.aftercare, facts: withSeed } } };
  const laid = (day: string, establishedBy: "seed" | "sod" | "unknown" = "sod", treatment: TicketTreatment = barrier) =>
    count("new-sod", { lawns: [{ ...LAWN, establishedBy, establishedOn: day as CalendarDate }], treatments: [treatment] });
  expect(laid("2026-02-14")).toBe(1);
  expect(laid("2026-02-13")).toBe(0);
  expect(laid("2026-04-14")).toBe(1);
  expect(laid("2026-04-15")).toBe(0);
  expect(laid("2026-04-01", "seed")).toBe(0);
  expect(laid("2026-04-01", "sod", BARRIER)).toBe(0);
});

test("how long sod is new follows the label's words about seed: days, hours, or so many mowings", () => {
  const laid = (established: string, within: ConstraintOf<"seeding-before">["within"]) => {
    const withSeed = { ...BARRIER.use.aftercare.facts, "seeding-before": { kind: "seeding-before", within, labelWords: "Not on new seed.", basis: "label", source: "label of Barrier Nine" } } as const;
    const barrier = { ...BARRIER, use: { ...BARRIER.use, aftercare: { ...BARRIER.use.aftercare, facts: withSeed } } };
    return count("new-sod", { lawns: [{ ...LAWN, establishedBy: "sod", establishedOn: established as CalendarDate }], treatments: [barrier] });
  };
  const days = { anchor: "days", from: "application-start", days: 60 } as const;
  expect([laid("2026-02-14", days), laid("2026-02-13", days)]).toEqual([1, 0]);
  const hours = { anchor: "application-start", durationMinutes: 60 * 1440 - 1 } as const;
  expect([laid("2026-02-14", hours), laid("2026-02-13", hours)]).toEqual([1, 0]);
  const mowings = { anchor: "mowings", count: 2 } as const;
  expect([laid("2025-04-15", mowings), laid("2025-04-14", mowings)]).toEqual([1, 0]);
});

test("of a lawn on which nothing goes down nothing is said", () => {
  const lawns = [LAWN, { ...LAWN, zoneId: "back", grasses: [], grassesAssumed: true, areaOrigin: "imported" as const }];
  expect(checkLawns({ ...QUESTION, lawns, treatments: [BARRIER] })).toEqual([]);
});
