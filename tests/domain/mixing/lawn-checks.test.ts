import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { checkLawns } from "#domain/mixing/lawn-checks";
import { type ConstraintOf } from "#domain/label/aftercare-constraint";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type LawnSeeding } from "#domain/properties/lawn-seeding";
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
  const on = (day: string, standing: "done" | "planned" = "done") => ({ date: day as CalendarDate, standing });
  const found = (seeding: LawnSeeding, treatment: TicketTreatment = barrier) => count("new-sod", { lawns: [{ ...LAWN, seedings: [seeding] }], treatments: [treatment] });
  const laid = (day: string) => found({ kind: "sod", ...on(day) });
  expect(laid("2026-02-14")).toBe(1);
  expect(laid("2026-02-13")).toBe(0);
  expect(laid("2026-04-14")).toBe(1);
  expect(laid("2026-04-15")).toBe(0);
  expect(found({ kind: "new-lawn", method: "unknown", ...on("2026-04-01") })).toBe(0);
  expect(found({ kind: "sod", ...on("2026-04-01") }, BARRIER)).toBe(0);
  const said = (standing: "done" | "planned", date: string) => checkLawns({ ...QUESTION, lawns: [{ ...LAWN, seedings: [{ kind: "sod", ...on(date, standing) }] }], treatments: [barrier] }).find(({ rule }) => rule === "new-sod")?.what;
  expect(said("done", "2026-04-11")).toBe("The sod of Front was laid 3 days ago.");
  expect(said("done", "2026-04-13")).toBe("The sod of Front was laid 1 day ago.");
  expect(said("done", "2026-04-14")).toBe("The sod of Front was laid on the day of this work.");
  expect(said("planned", "2026-04-11")).toBe("Sod is planned for Front, 3 days before this work.");
  expect(said("planned", "2026-04-13")).toBe("Sod is planned for Front, 1 day before this work.");
  expect(said("planned", "2026-04-14")).toBe("Sod is planned for Front on the day of this work.");
});

test("how long sod is new follows the label's words about seed: days, hours, or so many mowings", () => {
  const laid = (established: string, within: ConstraintOf<"seeding-before">["within"]) => {
    const withSeed = { ...BARRIER.use.aftercare.facts, "seeding-before": { kind: "seeding-before", within, labelWords: "Not on new seed.", basis: "label", source: "label of Barrier Nine" } } as const;
    const barrier = { ...BARRIER, use: { ...BARRIER.use, aftercare: { ...BARRIER.use.aftercare, facts: withSeed } } };
    return count("new-sod", { lawns: [{ ...LAWN, seedings: [{ kind: "sod", date: established as CalendarDate, standing: "done" }] }], treatments: [barrier] });
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
