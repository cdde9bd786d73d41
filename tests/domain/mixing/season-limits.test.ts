import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { massInVolume, percentByWeight } from "#domain/quantities/active-ingredient";
import { densityOf } from "#domain/quantities/density";
import { rateOf } from "#domain/quantities/rate";
import { type ActiveIngredient, type SeasonLimit } from "#domain/label/label-facts";
import { checkSeason, passesSeason } from "#domain/mixing/season-limits";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, holdsOf, IRON, LAWN, PAST, QUESTION, withBarrier } from "../../support/ticket";

const perAcre = (pounds: string) => rateOf("active-ingredient-mass-per-area", pounds, "lb per acre");
const past = (on: string, pounds: string, name = "velodiamine") => ({ ...PAST, on: on as CalendarDate, activeIngredients: [{ name, rate: perAcre(pounds), modeOfAction: "unknown" as const }] });
const after = (...history: readonly ReturnType<typeof past>[]) => ({ lawns: [{ ...LAWN, history }], treatments: [BARRIER] });

function limited(period: SeasonLimit["period"], more: Partial<SeasonLimit> = {}): TicketTreatment {
  const limits = [{ activeIngredient: "velodiamine", most: perAcre("1.5"), period, ...more }];
  return { ...BARRIER, use: { ...BARRIER.use, seasonLimits: { limits, basis: "label", source: "label of Barrier Nine" } } };
}
const passed = (period: SeasonLimit["period"], on: string, ...history: readonly ReturnType<typeof past>[]) =>
  holdsOf({ on: on as CalendarDate, lawns: [{ ...LAWN, history }], treatments: [limited(period)] }).includes("hold season-limit-passed");

// 3 lb per 1,000 sq ft of 0.37 % is 0.0111 lb, 0.4835 lb per acre.
test("a season's limit counts the active ingredient over all products and the lawn's calendar year", () => {
  expect(holdsOf(after(past("2026-01-10", "1.01")))).toEqual([]);
  expect(holdsOf(after(past("2026-01-10", "1.02")))).toContain("hold season-limit-passed");
  expect(holdsOf(after(past("2025-12-31", "1.02")))).toEqual([]);
  const twice = [BARRIER, { ...BARRIER, line: 4, productId: "other", rate: rateOf("product-mass-per-area", "4", "lb per 1,000 sq ft") }];
  expect(holdsOf({ treatments: twice })).toEqual([]);
  expect(holdsOf({ ...after(past("2026-01-10", "0.5")), treatments: twice })).toContain("hold season-limit-passed");
});

test("what stands for later in the year counts too", () => {
  expect(passed("calendar-year", "2026-04-14", past("2026-09-01", "1.02"))).toBe(true);
  expect(passed("calendar-year", "2026-04-14", past("2027-01-02", "1.02"))).toBe(false);
});

test("12 months end the day before the same day of the next year, also over a leap day", () => {
  expect(passed("12-months", "2026-04-13", past("2025-04-14", "1.02"))).toBe(true);
  expect(passed("12-months", "2026-04-14", past("2025-04-14", "1.02"))).toBe(false);
  expect(passed("12-months", "2024-04-13", past("2023-04-14", "1.02"))).toBe(true);
  expect(passed("12-months", "2024-04-14", past("2023-04-14", "1.02"))).toBe(false);
});

test("of the 12 months the fullest that has the day in it counts, with what stands for later", () => {
  expect(passed("12-months", "2026-04-14", past("2026-09-01", "1.02"))).toBe(true);
  expect(passed("12-months", "2026-04-14", past("2027-04-14", "1.02"))).toBe(false);
  // One before and one after: both lie with the day in one stretch of 12 months, or they don't.
  expect(passed("12-months", "2026-04-14", past("2025-10-01", "0.6"), past("2026-09-01", "0.6"))).toBe(true);
  expect(passed("12-months", "2026-04-14", past("2025-06-01", "0.6"), past("2026-09-01", "0.6"))).toBe(false);
});

test("names of ingredients are the same whatever their capitals", () => {
  expect(holdsOf(after(past("2026-01-10", "1.02", "Velodiamine ")))).toContain("hold season-limit-passed");
});

test("what can't be decided holds: ingredients nobody entered, a density that is missing, a limit on what the entry does not have", () => {
  const undecided = "hold season-limit-undecided";
  expect(holdsOf(withBarrier({ label: { ...BARRIER.label, activeIngredients: "unknown" } }))).toContain(undecided);
  const active = { name: "velodiamine", modeOfAction: { group: "Group 3" } } as const;
  const liquid = (more: Partial<TicketTreatment["label"]>) => ({ treatments: [BARRIER, { ...IRON, label: { ...IRON.label, ...more } }] });
  const byWeight = { ...active, concentration: percentByWeight("10") };
  expect(holdsOf(liquid({ activeIngredients: [byWeight], density: "unknown" }))).toContain(undecided);
  expect(holdsOf(liquid({ activeIngredients: [byWeight], density: densityOf("9", "lb per gal") }))).not.toContain(undecided);
  expect(holdsOf(liquid({ activeIngredients: [{ ...active, concentration: massInVolume("0.1", "lb per gal") }], density: "unknown" }))).not.toContain(undecided);
  expect(holdsOf({ treatments: [limited("calendar-year", { activeIngredient: "another name" })] })).toContain(undecided);
});

test("what an earlier application brought and nobody can count leaves the total undecided, and is named", () => {
  const unread = { ...PAST, on: "2026-03-01" as CalendarDate, activeIngredients: "unknown" } as const;
  const uncounted = { ...PAST, on: "2026-03-02" as CalendarDate, activeIngredients: [{ name: "Velodiamine", rate: "not-countable", modeOfAction: "unknown" }] } as const;
  const found = (...history: readonly PastApplication[]) => checkSeason(BARRIER, [{ ...LAWN, history }], { ...QUESTION, treatments: [BARRIER] });
  expect(found(unread, uncounted)).toMatchObject([
    {
      level: "hold",
      answerableBy: "office",
      rule: "season-limit-undecided",
      what: "How much velodiamine Front gets can't be worked out.",
      figure: "What Otherwise 5, put down on Mar 1, 2026, brings of it can't be counted. What Otherwise 5, put down on Mar 2, 2026, brings of it can't be counted.",
    },
  ]);
  expect(found({ ...unread, on: "2025-12-31" as CalendarDate })).toEqual([]);
  expect(found({ ...uncounted, activeIngredients: [{ name: "oxathrin", rate: "not-countable", modeOfAction: "unknown" }] })).toEqual([]);
  // What can be counted passes the limit whatever the rest comes to.
  expect(found(unread, past("2026-01-10", "1.02")).map(({ rule }) => rule)).toEqual(["season-limit-undecided", "season-limit-passed"]);
});

// 3 lb per 1,000 sq ft of 0.37 % is 0.4835 lb per acre, and of 0.3 % of acid 0.392 lb.
const SALT = { name: "2,4-D, dimethylamine salt", concentration: percentByWeight("0.37"), modeOfAction: { group: "Group 4 herbicide" } } as const;
const ACID = { name: "2,4-D", equivalent: percentByWeight("0.3") };
const salted = (limit: string, acid?: ActiveIngredient["acid"]): TicketTreatment => ({
  ...limited("calendar-year", { activeIngredient: limit }),
  label: { ...BARRIER.label, activeIngredients: [{ ...SALT, ...(acid === undefined ? {} : { acid }) }] },
});
const ester = (pounds: string, acidPounds?: string): PastApplication => ({
  ...PAST,
  activeIngredients: [{ name: "2,4-D, 2-ethylhexyl ester", rate: perAcre(pounds), modeOfAction: "unknown", ...(acidPounds === undefined ? {} : { acid: { name: "2,4-d", rate: perAcre(acidPounds) } }) }],
});
const rulesOfSalt = (treatment: TicketTreatment, ...history: readonly PastApplication[]) =>
  checkSeason(treatment, [{ ...LAWN, history }], { ...QUESTION, treatments: [treatment] }).map(({ level, rule }) => `${level} ${rule}`);

test("salts and esters count by the acid where their labels state it", () => {
  expect(rulesOfSalt(salted("2,4-D", ACID), ester("1.9", "1.1"))).toEqual([]);
  expect(rulesOfSalt(salted("2,4-D", ACID), ester("1.9", "1.11"))).toEqual(["hold season-limit-passed"]);
});

test("a form of what is limited without an acid equivalent leaves the total undecided, never too low", () => {
  expect(rulesOfSalt(salted("2,4-D"))).toEqual(["hold season-limit-undecided"]);
  expect(rulesOfSalt(salted("2,4-D", ACID), ester("1.9"))).toEqual(["hold season-limit-undecided"]);
  const found = checkSeason(salted("2,4-D, dimethylamine salt"), [{ ...LAWN, history: [ester("1.9", "1.2")] }], { ...QUESTION, treatments: [salted("2,4-D, dimethylamine salt")] });
  expect(found).toMatchObject([
    { level: "hold", answerableBy: "office", figure: "Otherwise 5, put down on Mar 1, 2026, has 2,4-D, 2-ethylhexyl ester, of which no acid equivalent as 2,4-D, dimethylamine salt is on file." },
  ]);
  expect(rulesOfSalt(salted("2,4-D, dimethylamine salt"))).toEqual([]);
});

test("an ingredient under its chemical name counts as under its common one, and one of group 4 under an unknown name leaves the total undecided", () => {
  const printed = (name: string, acid?: string): PastApplication => ({
    ...PAST,
    activeIngredients: [{ name, rate: perAcre("1.9"), modeOfAction: { group: "Group 4 herbicide" }, ...(acid === undefined ? {} : { acid: { name: acid, rate: perAcre("1.2") } }) }],
  });
  const chemical = "Dimethylamine salt of 2,4-dichlorophenoxyacetic acid";
  expect(rulesOfSalt(salted("2,4-D", ACID), printed(chemical, "2,4-Dichlorophenoxyacetic acid"))).toEqual(["hold season-limit-passed"]);
  expect(rulesOfSalt(salted("2,4-D", ACID), printed(chemical))).toEqual(["hold season-limit-undecided"]);
  const [found, ...others] = checkSeason(salted("2,4-D", ACID), [{ ...LAWN, history: [printed("Amine salt of ferrolinic acid")] }], { ...QUESTION, treatments: [salted("2,4-D", ACID)] });
  expect([found, others]).toMatchObject([{ rule: "season-limit-undecided", figure: "Otherwise 5, put down on Mar 1, 2026, has Amine salt of ferrolinic acid, which may be 2,4-D under another name." }, []]);
  expect(rulesOfSalt(salted("2,4-D", ACID), printed("Dicamba, dimethylamine salt", "3,6-dichloro-o-anisic acid"))).toEqual([]);
  expect(rulesOfSalt(limited("calendar-year"), printed("Amine salt of ferrolinic acid"))).toEqual([]);
});

test("an acid that can't be counted for want of a density leaves it undecided too", () => {
  const liquid: TicketTreatment = { ...salted("2,4-D", ACID), rate: IRON.rate };
  expect(rulesOfSalt(liquid)).toEqual(["hold season-limit-undecided"]);
  expect(rulesOfSalt({ ...liquid, label: { ...liquid.label, density: densityOf("9", "lb per gal") } })).toEqual([]);
});

test("a limit that was not read, or that the label does not have, is not judged here", () => {
  for (const seasonLimits of ["none", "unknown"] as const) {
    expect(checkSeason({ ...BARRIER, use: { ...BARRIER.use, seasonLimits } }, [LAWN], QUESTION)).toEqual([]);
  }
});

test("a season without dates holds by the calendar year, and wants care where only the 12 months are full", () => {
  const said = (on: string, ...history: readonly PastApplication[]) =>
    checkSeason(limited("season"), [{ ...LAWN, history }], { ...QUESTION, on: on as CalendarDate, lawns: [{ ...LAWN, history }], treatments: [limited("season")] }).map(({ level, rule }) => `${level} ${rule}`);
  expect(said("2026-04-14", past("2026-03-01", "1.02"))).toEqual(["hold season-limit-passed"]);
  expect(said("2026-04-14", past("2025-09-01", "1.02"))).toEqual(["take-care season-limit-passed"]);
  expect(said("2026-04-14", past("2025-04-14", "1.02"))).toEqual([]);
  expect(said("2026-04-14", past("2025-09-01", "1.01"))).toEqual([]);
  const unread = { ...PAST, on: "2025-09-01" as CalendarDate, activeIngredients: "unknown" } as const;
  expect(said("2026-04-14", unread)).toEqual(["take-care season-limit-undecided"]);
  expect(said("2026-04-14", unread, past("2026-03-01", "1.02"))).toEqual(["hold season-limit-passed", "take-care season-limit-undecided"]);
});

test("whether a limit is passed is what the findings say of it, in whatever period", () => {
  const said = (treatment: TicketTreatment, ...history: readonly PastApplication[]) => {
    const lawns = [{ ...LAWN, history }];
    const question = { ...QUESTION, lawns, treatments: [treatment] };
    const isSaid = checkSeason(treatment, lawns, question).some(({ rule }) => rule === "season-limit-passed");
    expect(passesSeason(treatment, lawns, question)).toBe(isSaid);
    return isSaid;
  };
  const [inYear, inMonths] = [past("2026-01-10", "1.02"), past("2025-12-31", "1.02")];
  expect([said(limited("calendar-year"), inYear), said(limited("calendar-year"), inMonths)]).toEqual([true, false]);
  expect([said(limited("12-months"), inMonths), said(limited("season"), inYear), said(limited("season"), inMonths)]).toEqual([true, true, true]);
  expect([said(limited("season")), said(limited("season", { activeIngredient: "another" }), past("2026-01-10", "9", "another")), said(IRON)]).toEqual([false, false, false]);
  // What can't be counted leaves a total undecided, and the counted part passes by itself.
  expect([said(limited("season"), { ...inYear, activeIngredients: "unknown" }), said(limited("season"), { ...inYear, activeIngredients: "unknown" }, inYear)]).toEqual([false, true]);
});
