import fc from "fast-check";
import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, FINDING_LEVELS } from "#domain/foundation/finding";
import { missingFact } from "#domain/foundation/outcome";
import { type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { checkNitrogen } from "#domain/mixing/nitrogen-checks";
import { type PastApplication, type PastIngredient, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { of } from "#domain/quantities/quantity";
import { rateOf, scaleRate } from "#domain/quantities/rate";
import { MARION_COUNTY_FLORIDA, MARYLAND } from "../../support/law-fixtures";
import { BARRIER, FEED, IRON, LAWN, PAST, QUESTION, ticketOf } from "../../support/ticket";

const authority = { basis: "label", source: "a label" } as const;

/** Findings that ask for more of something, and may go when there is more; where marks fall is chance, more or less of it. */
const OF_TOO_LITTLE = new Set(["rounded-off-plan", "label-rate-below-lowest", "rounded-below-lowest", "below-first-mark", "setting-of-another-rate", "spray-more-than-taken"]);

/** The gravest level at which each check says something. */
function levels(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { rule, level } of findings) {
    if (!OF_TOO_LITTLE.has(rule)) found.set(rule, Math.min(found.get(rule) ?? FINDING_LEVELS.length, FINDING_LEVELS.indexOf(level)));
  }
  return found;
}

/** Every check that spoke still speaks, as gravely or more so. */
function expectNoneLost(before: readonly Finding[], after: readonly Finding[]): void {
  const later = levels(after);
  for (const [rule, level] of levels(before)) {
    expect(later.has(rule), `${rule} is still said`).toBe(true);
    expect(later.get(rule) ?? FINDING_LEVELS.length, `${rule} is said as gravely`).toBeLessThanOrEqual(level);
  }
}

const days = fc.constantFrom("2025-04-20", "2025-09-10", "2026-01-10", "2026-03-01", "2026-04-10", "2026-05-20").map((day) => day as CalendarDate);
const pastIngredient: fc.Arbitrary<PastIngredient> = fc.record({
  name: fc.constantFrom("velodiamine", "oxathrin", "velodiamine, dimethylamine salt"),
  rate: fc.oneof(
    { weight: 5, arbitrary: fc.bigInt(0n, 20n).map((tenths) => rateOf("active-ingredient-mass-per-area", { numerator: tenths, denominator: 10n }, "lb per acre")) },
    { weight: 1, arbitrary: fc.constant("not-countable" as const) },
  ),
  modeOfAction: fc.constantFrom("none" as const, "unknown" as const, { group: "Group 3 herbicide" }, { group: "Group 14" }),
});
const past: fc.Arbitrary<PastApplication> = fc.record({
  on: days,
  visitId: fc.constant("earlier"),
  productId: fc.constantFrom("another", "feed", "barrier"),
  productName: fc.constantFrom("Otherwise 5", "Fieldrow Lime"),
  serviceType: fc.constantFrom("grassy weed control", "disease control", "other"),
  activeIngredients: fc.oneof(
    { weight: 5, arbitrary: fc.array(pastIngredient, { maxLength: 2 }) },
    { weight: 1, arbitrary: fc.constant("unknown" as const) },
  ),
  nutrients: fc.oneof(
    fc.bigInt(0n, 12n).map((pounds) => nutrientRatesOf(FEED.label, rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft"))),
    fc.constant(missingFact("analysis", "a grade", "The analysis of Otherwise 5 is not on file.")),
  ),
  label: fc.constantFrom(PAST.label, "unknown" as const),
  putDownAs: fc.constantFrom<PastApplication["putDownAs"]>(
    [],
    PAST.putDownAs,
    [{ useName: "Lawns", keptApart: { from: [{ from: "fertilizers", apart: { days: 7 } }], ...authority } }, ...PAST.putDownAs],
    [{ useName: "Lawns", keptApart: "unknown" }],
  ),
});
const lawn: fc.Arbitrary<TicketLawn> = fc.record({
  ...constants(LAWN),
  area: fc.bigInt(1n, 20_000n).map((feet) => of("sq ft", feet)),
  areaOrigin: fc.constantFrom("measured", "entered", "imported"),
  grasses: fc.constantFrom([], ["tall fescue" as const], ["bermudagrass" as const]),
  grassesAssumed: fc.boolean(),
  seedings: fc.constantFrom<TicketLawn["seedings"]>(
    [],
    [{ kind: "new-lawn", method: "unknown", date: "2026-03-20" as CalendarDate, standing: "done" }],
    [{ kind: "sod", date: "2026-03-20" as CalendarDate, standing: "done" }],
    [{ kind: "overseeding", method: "slit", date: "2026-03-20" as CalendarDate, standing: "planned" }],
  ),
  inBloom: fc.constantFrom("yes", "no", "unknown"),
  waterBeside: fc.constantFrom("none", "yes", "not-known"),
  waterEdges: fc.constantFrom([], [{ name: "the pond", length: "unknown" as const, width: "unknown" as const }], [{ name: "the pond", length: of("ft", 20n), width: of("ft", 4n) }]),
  history: fc.array(past, { maxLength: 4 }),
});

function constants<Value extends object>(value: Value): { [Name in keyof Value]: fc.Arbitrary<Value[Name]> } {
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, fc.constant(one as unknown)])) as { [Name in keyof Value]: fc.Arbitrary<Value[Name]> };
}

const useChange: fc.Arbitrary<Partial<Omit<LabelUse, "rates">>> = fc.record(
  {
    grasses: fc.constantFrom("any turfgrass" as const, "unknown" as const),
    leastDaysBetween: fc.constantFrom("none" as const, "unknown" as const, { days: 60, ...authority }),
    mostApplications: fc.constantFrom("none" as const, "unknown" as const, { count: 1, period: "season" as const, ...authority }, { count: 2, period: "12-months" as const, ...authority }),
    seasonLimits: fc.constantFrom("none" as const, "unknown" as const, {
      limits: [{ activeIngredient: "velodiamine", most: rateOf("active-ingredient-mass-per-area", "1.5", "lb per acre"), period: "season" as const }],
      ...authority,
    }),
    bloomAndBees: fc.constantFrom("none" as const, "unknown" as const, { labelWords: "Not on flowers.", ...authority }),
    keptApart: fc.constantFrom("none" as const, "unknown" as const, { from: [{ from: "all others", apart: "tank" as const }, { from: "lime", apart: { days: 60 } }], ...authority }),
    distanceToWater: fc.constantFrom("none" as const, "unknown" as const, { withDeflector: of("ft", 3n), otherwise: of("ft", 25n), ...authority }),
    stainsHardSurfaces: fc.constantFrom(true, false, "unknown" as const),
  },
  { requiredKeys: [] },
);
const labelChange: fc.Arbitrary<Partial<LabelFacts>> = fc.record(
  {
    analysis: fc.constantFrom("none" as const, "unknown" as const),
    density: fc.constant("unknown" as const),
    epaRegistrationNumber: fc.constantFrom("none" as const, "unknown" as const),
    activeIngredients: fc.constant("unknown" as const),
  },
  { requiredKeys: [] },
);
const factor = (from: bigint, to: bigint) => fc.bigInt(from, to).map((tenths) => ({ numerator: tenths, denominator: 10n }));
const treatment = fc.tuple(fc.constantFrom(FEED, IRON, BARRIER), useChange, labelChange, factor(1n, 30n)).map(
  ([one, use, label, times]): TicketTreatment => ({ ...one, use: { ...one.use, ...use }, label: { ...one.label, ...label }, rate: scaled(one.rate, times) }),
);

function scaled(rate: TicketTreatment["rate"], times: { readonly numerator: bigint; readonly denominator: bigint }): TicketTreatment["rate"] {
  return rate.basis === "product-mass-per-area" ? scaleRate(rate, times) : scaleRate(rate, times);
}

const visit = fc.tuple(
  fc.array(treatment, { minLength: 1, maxLength: 3 }),
  lawn,
  fc.constantFrom("IL" as const, "IN" as const, "FL" as const),
  fc.constantFrom(71, 85, "not-entered" as const),
  fc.nat(2),
  factor(10n, 40n),
);

function questions([treatments, one, state, forecastHighF, which, times]: typeof visit extends fc.Arbitrary<infer Value> ? Value : never): readonly [TicketQuestion, TicketQuestion] {
  const lined = treatments.map((each, index) => ({ ...each, line: index + 1 }));
  const question: TicketQuestion = { ...QUESTION, state, forecastHighF, lawns: [one], treatments: lined };
  const raised = lined.map((each, index) => (index === which % lined.length ? { ...each, rate: scaled(each.rate, times) } : each));
  return [question, { ...question, treatments: raised }];
}

test("no finding of a mix ticket vanishes or grows milder when a rate rises", () => {
  fc.assert(
    fc.property(visit, (drawn) => {
      const [question, raised] = questions(drawn);
      expectNoneLost(ticketOf(question).findings, ticketOf(raised).findings);
    }),
    { numRuns: 400 },
  );
});

test("nor does one of nitrogen under caps that no state here has on file", () => {
  fc.assert(
    fc.property(visit, fc.constantFrom(MARYLAND, MARION_COUNTY_FLORIDA), (drawn, pack) => {
      const [question, raised] = questions(drawn);
      expectNoneLost(checkNitrogen(question, pack), checkNitrogen(raised, pack));
    }),
    { numRuns: 400 },
  );
});

test("the two tests notice a finding that vanishes and one that grows milder", () => {
  const [first] = ticketOf({ lawns: [{ ...LAWN, history: [PAST], grassesAssumed: true }] }).findings.filter(({ rule }) => rule === "grass-assumed");
  if (first === undefined) throw new Error("The grass is assumed.");
  expect(() => expectNoneLost([first], [])).toThrow("grass-assumed is still said");
  expect(() => expectNoneLost([first], [{ ...first, level: "note" }])).toThrow("grass-assumed is said as gravely");
});
