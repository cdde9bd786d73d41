import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { rateOf } from "#domain/quantities/rate";
import { checkLabel } from "#domain/mixing/label-checks";
import { BARRIER, FEED, holdsOf, IRON, LAWN, PAST, QUESTION, rulesOf, SPRAYER, SPREADER, ticketOf, withBarrier, withFeed, withIron } from "../../support/ticket";

test("a plan inside everything is held by nothing", () => {
  expect(holdsOf()).toEqual([]);
});

test("above the highest rate is a hold that nobody may answer; below the lowest wants care", () => {
  const at = (pounds: string) => withFeed({ rate: rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft") });
  expect(ticketOf(at("3.1")).findings[0]).toMatchObject({ level: "hold", rule: "label-rate-above-highest", answerableBy: "nobody" });
  expect(rulesOf(at("3"))).not.toContain("hold label-rate-above-highest");
  expect(rulesOf(at("1.9"))).toContain("take-care label-rate-below-lowest");
  expect(rulesOf(at("2"))).not.toContain("take-care label-rate-below-lowest");
  const iron = (ounces: string) => rulesOf(withIron({ rate: rateOf("product-volume-per-area", ounces, "fl oz per 1,000 sq ft") }));
  expect(iron("2.01")).toContain("hold label-rate-above-highest");
  expect(iron("0.99")).toContain("take-care label-rate-below-lowest");
});

test("a rate just outside the label's range does not read like its end", () => {
  const figure = (pounds: string) => ticketOf(withFeed({ rate: rateOf("product-mass-per-area", pounds, "lb per 1,000 sq ft") })).findings.find(({ rule }) => rule.startsWith("label-rate"))?.figure;
  expect(figure("3.001")).toBe("The label's range is 2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft; planned is 3.001 lb per 1,000 sq ft.");
  expect(figure("1.9999")).toBe("The label's range is 2 lb per 1,000 sq ft to 3 lb per 1,000 sq ft; planned is 1.9999 lb per 1,000 sq ft.");
  const gear = { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "2.001", "gal per 1,000 sq ft") } };
  expect(ticketOf(withIron({ gear })).findings.find(({ rule }) => rule === "carrier-out-of-range")?.figure).toBe(
    "It puts out 2.001 gal per 1,000 sq ft; the label's range is 1 gal per 1,000 sq ft to 2 gal per 1,000 sq ft.",
  );
});

test("droplets outside the label's class hold, and so does a tip that nobody looked up where the label wants a class", () => {
  const droplets = { finest: "M", basis: "label", source: "label of the iron" } as const;
  const asked = (dropletClass: "F" | "VC" | "unknown", use: Partial<typeof IRON.use> = { droplets }) =>
    withIron({ use: { ...IRON.use, ...use }, gear: { ...SPRAYER, tip: { tip: "Gold", pressurePsi: 40, dropletClass } } });
  expect(ticketOf(asked("F")).findings.find(({ rule }) => rule === "droplets-finer-than-label")).toMatchObject({ level: "hold", answerableBy: "nobody", citation: "label of the iron" });
  expect(holdsOf(asked("VC"))).toEqual([]);
  expect(ticketOf(asked("unknown")).findings.find(({ rule }) => rule === "tip-droplets-not-entered")).toMatchObject({ level: "hold", answerableBy: "office" });
  expect(holdsOf(asked("unknown", { droplets: "unknown" }))).toEqual(["hold label-droplets-not-entered"]);
  // Nothing of the kind is asked of what is spread dry.
  expect(holdsOf(withFeed({ use: { ...FEED.use, droplets: "unknown" } }))).toEqual([]);
});

test("a rate by another measure than the label's can't be held against it and holds", () => {
  expect(holdsOf(withIron({ rate: rateOf("product-mass-per-area", "1", "lb per 1,000 sq ft") }))).toContain("hold rate-on-another-basis");
});

test("a grass that the label does not name holds; a label nobody read for it holds; any turfgrass is any", () => {
  expect(holdsOf({ lawns: [{ ...LAWN, grasses: ["tall fescue", "zoysiagrass"] }] })).toContain("hold grass-not-on-label");
  expect(holdsOf(withFeed({ use: { ...FEED.use, grasses: "unknown" } }))).toContain("hold grasses-not-read");
  expect(holdsOf({ lawns: [{ ...LAWN, grasses: ["zoysiagrass"] }], ...withFeed({ use: { ...FEED.use, grasses: "any turfgrass" } }) })).toEqual([]);
});

test("a sprayer that puts out more or less than the label's spray volume holds", () => {
  const at = (gallons: string) => withIron({ gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", gallons, "gal per 1,000 sq ft") } } });
  expect(holdsOf(at("2"))).toEqual([]);
  expect(holdsOf(at("2.01"))).toContain("hold carrier-out-of-range");
  expect(holdsOf(at("0.9"))).toContain("hold carrier-out-of-range");
  expect(holdsOf(withIron({ use: { ...IRON.use, carrier: "unknown" } }))).toContain("hold carrier-not-read");
  expect(holdsOf(withFeed({ use: { ...FEED.use, carrier: "unknown" } }))).toEqual([]);
});

test("granules in a sprayer and a liquid in a spreader hold", () => {
  expect(holdsOf(withFeed({ gear: SPRAYER }))).toContain("hold gear-does-not-fit");
  expect(holdsOf(withIron({ gear: SPREADER, rate: FEED.rate }))).toContain("hold gear-does-not-fit");
});

const past = (on: string) => ({ ...PAST, on: on as CalendarDate, productId: "barrier" });

test("sooner than the label's least days holds, on the lawn that had it, also before one that is planned for later", () => {
  const on = (day: string) => ({ lawns: [{ ...LAWN, history: [past(day)] }], treatments: [BARRIER] });
  expect(holdsOf(on("2026-02-14"))).toContain("hold too-soon-again");
  expect(holdsOf(on("2026-02-13"))).toEqual([]);
  expect(holdsOf(on("2026-06-12"))).toContain("hold too-soon-again");
  expect(holdsOf(on("2026-06-13"))).toEqual([]);
  expect(ticketOf(on("2026-04-13")).findings.find(({ rule }) => rule === "too-soon-again")?.figure).toContain("1 day lies between");
});

test("an entry that nobody confirmed holds, and the office answers by confirming it", () => {
  expect(ticketOf(withFeed({ labelConfirmedBy: null })).findings[0]).toMatchObject({ rule: "label-not-confirmed", answerableBy: "office" });
});

test("restricted use wants care, and what stains is a note", () => {
  expect(rulesOf(withBarrier({ label: { ...BARRIER.label, isRestrictedUse: true } }))).toContain("take-care restricted-use");
  expect(rulesOf(withIron({}))).toContain("note stains");
  expect(rulesOf(withFeed({}))).not.toContain("note stains");
});

test("every fact that nobody has read holds and says what is missing", () => {
  const unread = { ...IRON.use, carrier: "unknown", leastDaysBetween: "unknown", mostApplications: "unknown", seasonLimits: "unknown", stainsHardSurfaces: "unknown", grasses: "unknown" } as const;
  const treatment = { ...IRON, use: unread, label: { ...IRON.label, isRestrictedUse: "unknown", activeIngredients: "unknown", epaRegistrationNumber: "unknown" } } as const;
  const rules = checkLabel(treatment, { ...QUESTION, treatments: [treatment] }).map(({ level, rule }) => `${level} ${rule}`);
  for (const rule of ["carrier-not-read", "interval-not-read", "season-limit-not-read", "most-applications-not-read", "staining-not-read", "grasses-not-read", "restricted-use-not-read", "ingredients-not-read", "registration-not-read"]) {
    expect(rules.filter((said) => said === `hold ${rule}`)).toHaveLength(1);
  }
});

test("spot work above the label's most of a lawn, and work all over under a label for spots, are holds that nobody may answer", () => {
  const use = { ...IRON.use, besideRates: { mostSpotShareBasisPoints: 1000 } };
  const found = (more: Parameters<typeof withIron>[0]) => ticketOf(withIron({ use, ...more })).findings.find(({ rule }) => rule === "spot-share-above-label");
  expect(found({ spot: { shareBasisPoints: 1000 } })).toBeUndefined();
  expect(found({ spot: { shareBasisPoints: 1050 } })).toMatchObject({ level: "hold", answerableBy: "nobody", figure: "The label allows it on 10% of a lawn at most; it is planned on 10.5% of it." });
  expect(found({})).toMatchObject({ figure: "The label allows it on 10% of a lawn at most; it is planned all over the lawn." });
});

test("spray to wet is a note", () => {
  expect(rulesOf(withIron({ use: { ...IRON.use, besideRates: { isToWet: true } } }))).toContain("note spray-to-wet");
  expect(rulesOf()).not.toContain("note spray-to-wet");
});
