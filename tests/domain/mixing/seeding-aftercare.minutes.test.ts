// Seed before and after products, against a second way that asks the first and the last minute of the day of the seed.
import fc from "fast-check";
import { expect, test } from "vitest";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { seedingFindings } from "#domain/mixing/seeding-aftercare";
import { reachesBack, visitsDrawn } from "../../support/aftercare-arbitraries";
import { labelOf, says } from "../../support/aftercare-builders";
import { day } from "../../support/domain-answers";
import { notBefore, statedBy, within } from "../../support/label-by-the-minute";
import { dateAfter, dateAt, firstMinuteOf, MINUTE } from "../../support/wall-clock";

const visits = fc.record({ visit: visitsDrawn, daysAfter: fc.integer({ min: -2, max: 70 }), soon: fc.boolean(), method: fc.constantFrom("broadcast" as const, "slit" as const, "unknown" as const) });

function rulesOf(product: AppliedProduct, seeded: { readonly date: string; readonly method: "broadcast" | "slit" | "unknown"; readonly standing: "planned" | "done" }, zone: string): readonly string[] {
  return seedingFindings([product], [{ ...seeded, date: day(seeded.date) }], zone).map(({ level, rule }) => `${level} ${rule}`);
}

test("seed comes too soon on a day in whose first minute an interval for its method still runs", () => {
  const seen = new Set<boolean>();
  fc.assert(
    fc.property(visits, ({ visit, daysAfter, soon, method }) => {
      const { zone, visitUntil } = visit.ground;
      const date = dateAfter(dateAt(zone, visitUntil), soon ? daysAfter % 7 : daysAfter);
      for (const product of visit.products) {
        const { application } = product;
        const own = (statedBy(product, "seeding-after")?.intervals ?? []).filter((one) => method === "unknown" || one.method === "any" || one.method === method);
        const timed = own.flatMap(({ until }) => (until.anchor === "mowings" ? [] : [notBefore(until, application, zone)]));
        const isPast = date < dateAt(zone, application.startsAtEpochMilliseconds);
        const isTooSoon = !isPast && timed.some((holds) => holds(firstMinuteOf(zone, date)));
        // What is down by other work can't be left out any more.
        const level = product.appliedIn === "earlier-visit" ? "take-care" : "hold";
        const rules = rulesOf(product, { date, method, standing: "planned" }, zone);
        seen.add(isTooSoon);
        if (isTooSoon) expect(rules[0]).toBe(`${level} seeding-too-soon-after`);
        // A lawn is mowed once a day at most: mowings that can't have been by then come too soon as well.
        const days = (Date.parse(date) - Date.parse(dateAt(zone, application.endsAtEpochMilliseconds))) / 86_400_000;
        const isUnmowed = !isPast && own.some(({ until }) => until.anchor === "mowings" && until.count > days);
        expect(rules.includes(`${level} seeding-too-soon-after`)).toBe(isTooSoon || isUnmowed);
        expect(rulesOf(product, { date, method, standing: "done" }, zone)).toEqual([]);
      }
    }),
    { numRuns: 250 },
  );
  expect(seen.size).toBe(2);
});

const befores = fc.record({ visit: visitsDrawn, back: reachesBack, daysBefore: fc.integer({ min: -1, max: 6 }), standing: fc.constantFrom("planned" as const, "done" as const) });

test("a product comes too soon after seed that went down on a day of which a minute lies within the time before it", () => {
  const seen = new Set<boolean>();
  fc.assert(
    fc.property(befores, ({ visit, back, daysBefore, standing }) => {
      const [first] = visit.products;
      if (first === undefined) return;
      const applied = { ...first, appliedIn: "this-visit", label: labelOf("Tender", says("seeding-before", { within: back })) } as const;
      const { zone } = visit.ground;
      const { application } = applied;
      const date = dateAfter(dateAt(zone, application.startsAtEpochMilliseconds), -daysBefore);
      const lastMinute = firstMinuteOf(zone, dateAfter(date, 1)) - MINUTE;
      const isTooSoon = firstMinuteOf(zone, date) < application.endsAtEpochMilliseconds && within(back, application, zone)(lastMinute);
      seen.add(isTooSoon);
      expect(rulesOf(applied, { date, method: "unknown", standing }, zone)).toEqual(isTooSoon ? ["hold too-soon-after-seeding"] : []);
    }),
    { numRuns: 250 },
  );
  expect(seen.size).toBe(2);
});
