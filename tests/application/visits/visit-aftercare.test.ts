import { expect, test } from "vitest";
import { type LookOnFile } from "#application/properties/lawn-looks";
import { type PutDownOnZone } from "#application/register/zone-history";
import { type LawnFacts } from "#application/visits/ticket-facts";
import { aftercareOfVisit, appliedByPlan, hoursNotOnFile, spanOfVisit } from "#application/visits/visit-aftercare";
import { type VisitRow } from "#application/visits/visit-rows";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { type LawnSeeding } from "#domain/properties/lawn-seeding";
import { of } from "#domain/quantities/quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { at, FRONT, hoursAfterEnd, labelOf, rowOf, says, untilState } from "../../support/aftercare-builders";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { FEED, IRON, LAWN } from "../../support/ticket";

const ZONE = "America/Indiana/Indianapolis";
const TUESDAY = day("2026-04-14");

function visitAt(property: Partial<VisitRow["property"]> = {}, more: Partial<VisitRow> = {}): VisitRow {
  return {
    visitId: "visit", version: 1, name: "Spring feed", roundId: null, opensOn: TUESDAY, closesOn: TUESDAY, state: "planned", window: null, serviceMinutes: 30,
    secondLookAfterDays: null, looksAgainAtId: null, treatments: [], looks: [], stop: null, client: { clientId: "client", name: "Avery Thorn", phone: null },
    property: {
      propertyId: "property", street: "4 Sorrel Lane", city: "Millbrook", state: "OH", zip: "46304", position: null, accessNote: null, dogNote: null, tankWater: "unknown", mowingDay: null,
      townRule: "unknown", controller: "unknown", ...property,
    },
    ...more,
  };
}

const lawn = (zoneId: string, more: Partial<LawnFacts> = {}): LawnFacts => ({ propertyId: "property", looks: [], putDown: [], stations: [FRONT], lawn: { ...LAWN, zoneId, name: zoneId }, ...more });
const treated = (treatment: TicketTreatment, zoneIds: readonly string[], facts: Partial<LabelAftercare["facts"]> = {}): TicketTreatment => ({
  ...treatment, zoneIds, use: { ...treatment.use, aftercare: labelOf(treatment.label.productName, facts) },
});

const plannedCare = (visit: VisitRow, lawns: readonly LawnFacts[], treatments: readonly TicketTreatment[], setting: Parameters<typeof aftercareOfVisit>[3]) =>
  aftercareOfVisit(visit, lawns, appliedByPlan(treatments, setting.span), setting);

const TEN_TO_MIDNIGHT = { fromMinute: 22 * 60, untilMinute: 24 * 60 };
const watersIn = says("watering-in", { by: hoursAfterEnd(24), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" });
const settingFrom = (from: string, until: string) => ({ timeZone: ZONE, zoneDataVersion: "2026a", span: { fromEpochMilliseconds: at(from), untilEpochMilliseconds: at(until) } });
const MORNING = settingFrom("2026-04-14T08:00-04:00", "2026-04-14T08:30-04:00");
const EVENING = settingFrom("2026-04-14T20:30-04:00", "2026-04-14T21:00-04:00");

function windowsOf(visit: VisitRow, facts: Partial<LabelAftercare["facts"]>, setting = EVENING) {
  const [only] = valueOf(plannedCare(visit, [lawn("Front")], [treated(FEED, ["Front"], facts)], setting));
  const watering = only?.timeline.watering;
  if (watering?.kind !== "window") throw new Error(`There is no window: ${String(watering?.kind)}`);
  const iso = (instant: number) => new Date(instant).toISOString().slice(0, 16);
  return watering.windows.map(({ fromEpochMilliseconds, untilEpochMilliseconds }) => [iso(fromEpochMilliseconds), iso(untilEpochMilliseconds)]);
}

test("lawns that get the same products are one group, and a lawn that gets none has no aftercare", () => {
  const lawns = [lawn("Front"), lawn("Back"), lawn("Side"), lawn("Untreated")];
  const groups = valueOf(plannedCare(visitAt(), lawns, [treated(FEED, ["Front", "Back", "Side"], watersIn), treated(IRON, ["Back"])], MORNING));
  expect(groups.map(({ lawnNames }) => lawnNames)).toEqual([["Front", "Side"], ["Back"]]);
});

test("seed counts for the lawns that get a product, once where they have it alike, and is named where the visit has several lawns", () => {
  const keepsOff = { ...says("seeding-before", { within: { anchor: "calendar-day", days: 28 } }), ...says("seeding-after", { intervals: [{ method: "any", until: { anchor: "calendar-day", days: 28 } }] }) } as const;
  const over = { kind: "overseeding", method: "slit", date: day("2026-04-03"), standing: "done" } as const;
  const planned = { kind: "new-lawn", method: "unknown", date: day("2026-05-01"), standing: "planned" } as const;
  const sod = { kind: "sod", date: day("2026-04-10"), standing: "done" } as const;
  const seeded = (zoneId: string, ...seedings: LawnSeeding[]) => lawn(zoneId, { lawn: { ...LAWN, zoneId, name: zoneId, seedings } });
  const said = (lawns: readonly LawnFacts[], zoneIds: readonly string[]) =>
    valueOf(plannedCare(visitAt(), lawns, [treated(FEED, zoneIds, keepsOff)], MORNING)).flatMap(({ timeline }) => timeline.findings.filter(({ level }) => level === "hold").map(({ what }) => what));
  const lawns = [seeded("Front", over, planned, sod), seeded("Side", over), seeded("Back", sod)];
  const product = FEED.label.productName;
  expect(said(lawns, ["Front", "Side", "Back"])).toEqual([
    `Seeding of Front is planned for Friday, May 1, 2026, too soon after ${product}.`,
    `${product} comes too soon after the seeding of Front and Side on Friday, Apr 3, 2026.`,
  ]);
  expect(said(lawns, ["Side"])).toEqual([`${product} comes too soon after the seeding of Friday, Apr 3, 2026.`]);
  expect(said(lawns, ["Back"])).toEqual([]);
});

test("what one product asks for binds the lawns that get it and no other", () => {
  const notBefore = says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] });
  const groups = valueOf(plannedCare(visitAt(), [lawn("Front"), lawn("Back")], [treated(FEED, ["Front", "Back"]), treated(IRON, ["Back"], notBefore)], MORNING));
  expect(groups.map(({ timeline }) => rowOf(timeline.steps, "watering"))).toEqual([[], [["may-not", "2026-04-14T12:00", "2026-04-15T00:30"]]]);
});

test("after an evening visit the watering falls past midnight, in hours that began on the day on file", () => {
  const visit = visitAt({ townRule: { days: { weekdays: [2] }, hours: { fromMinute: 22 * 60, untilMinute: 5 * 60 } } });
  const sixHoursDry = says("watering-not-before", { untilLaterOf: [hoursAfterEnd(6)] });
  expect(windowsOf(visit, { ...watersIn, ...sixHoursDry })).toEqual([["2026-04-15T07:00", "2026-04-15T09:00"]]);
});

test("hours that run to midnight end there", () => {
  const visit = visitAt({ controller: { days: { weekdays: [2] }, hours: TEN_TO_MIDNIGHT } });
  expect(windowsOf(visit, watersIn)).toEqual([["2026-04-15T02:00", "2026-04-15T04:00"]]);
});

test("days without hours are whole days, hours without days are of every day, and Sunday is the seventh", () => {
  expect(windowsOf(visitAt({ townRule: { days: { weekdays: [3] }, hours: null } }), watersIn)).toEqual([["2026-04-15T04:00", "2026-04-16T01:00"]]);
  expect(windowsOf(visitAt({ townRule: { days: null, hours: { fromMinute: 300, untilMinute: 360 } } }), watersIn)).toEqual([["2026-04-15T09:00", "2026-04-15T10:00"]]);
  const saturday = settingFrom("2026-04-18T20:30-04:00", "2026-04-18T21:00-04:00");
  // April 14 and 15: the window of 24 h after Tuesday's visit has a part of each.
  expect(windowsOf(visitAt({ townRule: { days: { dates: "odd" }, hours: null } }), watersIn)).toEqual([["2026-04-15T04:00", "2026-04-16T01:00"]]);
  expect(windowsOf(visitAt({ townRule: { days: { dates: "house-number" }, hours: TEN_TO_MIDNIGHT } }), watersIn)).toEqual([["2026-04-15T02:00", "2026-04-15T04:00"]]);
  expect(windowsOf(visitAt({ townRule: { days: { weekdays: [7] }, hours: null } }), watersIn, saturday)).toEqual([["2026-04-19T04:00", "2026-04-20T01:00"]]);
});

test("water runs where the town's rule and the controller meet", () => {
  const visit = visitAt({ townRule: { days: { dates: "odd" }, hours: { fromMinute: 240, untilMinute: 540 } }, controller: { days: { weekdays: [3] }, hours: { fromMinute: 300, untilMinute: 660 } } });
  expect(windowsOf(visit, watersIn)).toEqual([["2026-04-15T09:00", "2026-04-15T13:00"]]);
});

test("a rule that leaves no time is a license holder's to answer, and nobody is told to set the controller anew against it", () => {
  const twelveHours = says("watering-in", { by: hoursAfterEnd(12), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" });
  const oddEvenings = { days: { dates: "odd" }, hours: { fromMinute: 18 * 60, untilMinute: 24 * 60 } } as const;
  const [only] = valueOf(plannedCare(visitAt({ townRule: oddEvenings, controller: { days: null, hours: TEN_TO_MIDNIGHT } }), [lawn("Front")], [treated(FEED, ["Front"], twelveHours)], MORNING));
  const found = only?.timeline.findings.find(({ rule }) => rule === "watering-hours-leave-no-time");
  expect(found).toMatchObject({ source: "law", answerableBy: "license-holder", figure: expect.stringContaining("Local rules: odd dates 6 pm to midnight.") as string });
  expect(found?.toDo).not.toContain("controller");
});

test("what nobody knows of the hours is said where something wants water, and only there", () => {
  const aftercareFor = (visit: VisitRow, facts: Partial<LabelAftercare["facts"]>) => valueOf(plannedCare(visit, [lawn("Front")], [treated(FEED, ["Front"], facts)], MORNING));
  const said = (visit: VisitRow, facts: Partial<LabelAftercare["facts"]>) => hoursNotOnFile(visit, aftercareFor(visit, facts)).map(({ level, rule, about }) => [level, rule, ...about]);
  expect(said(visitAt(), watersIn)).toEqual([["take-care", "watering-hours-not-on-file", "4 Sorrel Lane"]]);
  expect(said(visitAt({ townRule: "none", controller: { days: { weekdays: [3] }, hours: null } }), watersIn)).toEqual([["take-care", "watering-hours-of-controller-without-hours", "4 Sorrel Lane"]]);
  expect(said(visitAt({ townRule: "none", controller: "none" }), watersIn)).toEqual([]);
  expect(said(visitAt(), {})).toEqual([]);
  // Where the controller leaves no time the town's rule is asked for all the more.
  const evenings = { days: null, hours: TEN_TO_MIDNIGHT };
  const inTwelve = says("watering-in", { by: hoursAfterEnd(12), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" });
  expect(aftercareFor(visitAt({ controller: evenings }), inTwelve)).toMatchObject([{ timeline: { watering: { kind: "no-window" } } }]);
  expect(said(visitAt({ controller: evenings }), inTwelve)).toEqual([
    ["take-care", "watering-hours-of-town-not-on-file", "4 Sorrel Lane"],
    ["take-care", "watering-hours-of-controller-without-days", "4 Sorrel Lane"],
  ]);
});

test("where no mowing day is fixed nobody is asked for one, and where none is on file somebody is", () => {
  const mowLater = says("mowing-after", { untilLaterOf: [hoursAfterEnd(24)] });
  const rules = (mowingDay: VisitRow["property"]["mowingDay"]) =>
    valueOf(plannedCare(visitAt({ mowingDay }), [lawn("Front")], [treated(FEED, ["Front"], mowLater)], MORNING)).flatMap(({ timeline }) => timeline.findings.map(({ rule }) => rule));
  // The visit is on a Tuesday.
  expect([null, "no-fixed-day", 3, 7].map((day) => rules(day as VisitRow["property"]["mowingDay"]))).toEqual([["mowing-day-missing"], [], ["mowing-day-in-the-way"], []]);
});

test("a sign stands as long as the later of label and law wants, and a state without a law on file adds none", () => {
  const down = (daysFollowing: number) => says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "day-following", daysFollowing, orReentryIfLater: false } });
  const signsOf = (state: "IN" | "OH", facts: Partial<LabelAftercare["facts"]>) => {
    const [only] = valueOf(plannedCare(visitAt({ state }), [lawn("Front")], [treated(FEED, ["Front"], facts)], MORNING));
    return only?.timeline.steps.filter(({ row, kind }) => row === "sign" && kind === "may-not").map(({ endsAtWords, reasons }) => [endsAtWords, reasons.map(({ basis }) => basis).toSorted()]);
  };
  expect(signsOf("IN", {})).toEqual([["Wednesday, Apr 15, 2026, 12 am", ["law"]]]);
  expect(signsOf("IN", down(2))).toEqual([["Thursday, Apr 16, 2026, 12 am", ["label", "law"]]]);
  expect(signsOf("IN", says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "elapsed", anchor: "application-end", durationMinutes: 120, orReentryIfLater: false } }))).toEqual([
    ["Wednesday, Apr 15, 2026, 12 am", ["label", "law"]],
  ]);
  expect(signsOf("OH", {})).toEqual([]);
});

test("a planned visit says when the sign has to be up, in the words of each rule that asks for it", () => {
  const sign = says("posting-sign", { upBy: "before-application", mayComeDown: { trigger: "no-time-required" } });
  const putUp = (facts: Partial<LabelAftercare["facts"]>) =>
    valueOf(plannedCare(visitAt({ state: "IN" }), [lawn("Front")], [treated(FEED, ["Front"], facts), treated(IRON, ["Front"])], MORNING))[0]
      ?.timeline.steps.filter(({ row, kind }) => row === "sign" && kind === "must")
      .map(({ words, reasons }) => [words, reasons.map(({ basis, productName }) => `${basis} ${productName}`)]);
  const lawOfBoth = ["law Harrowgate 32", "law Rustwater Iron"];
  expect(putUp({})).toEqual([["Put the sign up at the time of the application.", lawOfBoth]]);
  expect(putUp(sign)).toEqual([
    ["Put the sign up at the time of the application.", lawOfBoth],
    ["Put the sign up before the application.", ["label Harrowgate 32"]],
  ]);
});

/** What was put down at another visit, a day and an hour before the morning's. */
function before(label: LabelAftercare, more: Partial<PutDownOnZone> = {}): PutDownOnZone {
  const application = { startsAtEpochMilliseconds: at("2026-04-13T06:30-04:00"), endsAtEpochMilliseconds: at("2026-04-13T07:00-04:00"), postedAtEpochMilliseconds: "not-posted" } as const;
  return { visitId: "before", productId: "iron", line: 1, label, application, signIsUp: true, ...more };
}

const stillDry = labelOf("Ferrox Foliar", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(48)] }));

test("what was put down on a lawn before keeps what it asks for, and lawns without it are another group", () => {
  const groups = valueOf(plannedCare(visitAt(), [lawn("Front", { putDown: [before(stillDry)] }), lawn("Back")], [treated(FEED, ["Front", "Back"])], MORNING));
  expect(groups.map(({ lawnNames, timeline }) => [lawnNames, rowOf(timeline.steps, "watering")])).toEqual([
    [["Front"], [["may-not", "2026-04-13T10:30", "2026-04-15T11:00"]]],
    [["Back"], []],
  ]);
  expect(groups[0]?.timeline.steps[0]?.reasons.map(({ productName }) => productName)).toEqual(["Ferrox Foliar (put down Monday, Apr 13, 2026)"]);
});

const during = (from: string, until: string) => ({ application: { startsAtEpochMilliseconds: at(from), endsAtEpochMilliseconds: at(until), postedAtEpochMilliseconds: "not-posted" } as const });
const keepOff = labelOf("Keepoff", { ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(24)] }), ...says("watering-not-before", { untilLaterOf: [hoursAfterEnd(24)] }) });
const inTwelveHours = says("watering-in", { by: hoursAfterEnd(12), depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" });

test("a planned visit counts other work that overlaps its hours, by a minute or by all of them", () => {
  const holdsAfter = (from: string, until: string) => {
    const [only] = valueOf(plannedCare(visitAt(), [lawn("Front", { putDown: [before(keepOff, during(from, until))] })], [treated(FEED, ["Front"], inTwelveHours)], MORNING));
    return [rowOf(only?.timeline.steps ?? [], "people-and-pets").length, ...(only?.timeline.findings ?? []).map(({ level, rule }) => `${level} ${rule}`).toSorted()];
  };
  const both = [1, "hold crew-while-people-stay-off", "hold no-common-watering-time"];
  expect(holdsAfter("2026-04-14T07:50-04:00", "2026-04-14T08:00-04:00")).toEqual(both);
  expect(holdsAfter("2026-04-14T08:00-04:00", "2026-04-14T08:01-04:00")).toEqual(both);
  expect(holdsAfter("2026-04-14T08:00-04:00", "2026-04-14T08:30-04:00")).toEqual(both);
  expect(holdsAfter("2026-04-14T08:29-04:00", "2026-04-14T09:30-04:00")).toEqual(both);
  expect(holdsAfter("2026-04-14T08:30-04:00", "2026-04-14T09:30-04:00")).toEqual([0]);
});

test("what was put down before and is at odds by itself holds up no ticket that has no part in it", () => {
  const wet = before(labelOf("Evenfeed 18", watersIn), during("2026-04-13T14:30-04:00", "2026-04-13T15:00-04:00"));
  const dry = before(stillDry, { line: 2, ...during("2026-04-13T14:30-04:00", "2026-04-13T15:00-04:00") });
  const [only] = valueOf(plannedCare(visitAt(), [lawn("Front", { putDown: [wet, dry] })], [treated(FEED, ["Front"])], MORNING));
  expect(only?.timeline.findings.map(({ level, rule }) => `${level} ${rule}`)).toEqual(["take-care no-common-watering-time"]);
  expect(only?.timeline.watering).toMatchObject({ kind: "window", isOverdue: true });
});

test("a visit's own record is not before it", () => {
  const [only] = valueOf(plannedCare(visitAt({}, { visitId: "before" }), [lawn("Front", { putDown: [before(stillDry)] })], [treated(FEED, ["Front"])], MORNING));
  expect(rowOf(only?.timeline.steps ?? [], "watering")).toEqual([]);
});

test("what was said of water waters in what came before it", () => {
  const fed = labelOf("Harrowgate 32", { ...watersIn, ...says("people-and-pets", { untilLaterOf: [untilState("watered-in")] }) });
  const offTheLawn = (...looks: readonly LookOnFile[]) => {
    const [only] = valueOf(plannedCare(visitAt(), [lawn("Front", { putDown: [before(fed)], looks })], [treated(IRON, ["Front"])], MORNING));
    return [rowOf(only?.timeline.steps ?? [], "people-and-pets").length, only?.timeline.findings.some(({ rule }) => rule === "watering-in-overdue")];
  };
  const look: LookOnFile = {
    lawnLookId: "look", zoneId: "Front", seenOn: TUESDAY, seenAtEpochMilliseconds: at("2026-04-13T18:00-04:00"), enteredAtEpochMilliseconds: at("2026-04-13T18:00-04:00"), seenBy: "Rowan Ash",
    blooms: "not-looked", said: null, words: "", watering: { wateredAtEpochMilliseconds: at("2026-04-13T17:30-04:00"), wateredBy: "sprinklers", depth: "not-stated", toldBy: "customer", words: "" },
  };
  expect(offTheLawn()).toEqual([1, true]);
  expect(offTheLawn({ ...look, watering: null })).toEqual([1, true]);
  expect(offTheLawn(look)).toEqual([0, false]);
});

test("the sign of the day before stands as long as the law wants", () => {
  const [only] = valueOf(plannedCare(visitAt({ state: "IN" }), [lawn("Front", { putDown: [before(labelOf("Ferrox Foliar"), { application: { startsAtEpochMilliseconds: at("2026-04-14T06:30-04:00"), endsAtEpochMilliseconds: at("2026-04-14T07:00-04:00"), postedAtEpochMilliseconds: "not-posted" } })] })], [treated(FEED, ["Front"])], MORNING));
  const sign = only?.timeline.steps.find(({ row, kind }) => row === "sign" && kind === "may-not");
  expect(sign?.reasons.map(({ productName, basis }) => `${basis} ${productName}`)).toEqual(["law Ferrox Foliar (put down Tuesday, Apr 14, 2026)", "law Harrowgate 32"]);
});

test("a sign of the day before that was never put up is not to be left up", () => {
  const wantsSign = labelOf("Ferrox Foliar", { ...says("posting-sign", { upBy: "at-start", mayComeDown: { trigger: "day-following", daysFollowing: 3, orReentryIfLater: false } }), ...says("people-and-pets", { untilLaterOf: [hoursAfterEnd(48)] }) });
  const reasonsOf = (signIsUp: boolean) => {
    const [only] = valueOf(plannedCare(visitAt({ state: "IN" }), [lawn("Front", { putDown: [before(wantsSign, { signIsUp })] })], [treated(FEED, ["Front"])], MORNING));
    const steps = only?.timeline.steps.filter(({ kind }) => kind === "may-not") ?? [];
    return steps.map(({ row, reasons }) => [row, ...reasons.map(({ productName, basis }) => `${basis} ${productName}`)]);
  };
  expect(reasonsOf(true)).toEqual([["people-and-pets", "label Ferrox Foliar (put down Monday, Apr 13, 2026)"], ["sign", "label Ferrox Foliar (put down Monday, Apr 13, 2026)", "law Harrowgate 32"]]);
  expect(reasonsOf(false)).toEqual([["people-and-pets", "label Ferrox Foliar (put down Monday, Apr 13, 2026)"], ["sign", "law Harrowgate 32"]]);
});

test("a second look is asked for as many days later as the visit says", () => {
  const lookOf = (secondLookAfterDays: number | null) => valueOf(plannedCare(visitAt({}, { secondLookAfterDays }), [lawn("Front")], [treated(FEED, ["Front"])], MORNING))[0]?.timeline.secondLook?.date;
  expect([lookOf(3), lookOf(null)]).toEqual(["2026-04-17", undefined]);
});

test("a question that can't be meant is refused as a whole", () => {
  const backwards = settingFrom("2026-04-14T08:30-04:00", "2026-04-14T08:00-04:00");
  expect(refusalOf(plannedCare(visitAt(), [lawn("Front")], [treated(FEED, ["Front"])], backwards)).sentence).not.toBe("");
});

test("the span begins when the truck arrives, else when its day begins, else at nine, and lasts as long as the work", () => {
  const stop = {
    routeDayId: "d", date: TUESDAY, vehicleId: "truck", operatorId: "rowan", position: 1, arrivesAtMinute: 450, driveMinutes: null, isPinned: false, startsAtMinute: 420, forecastHighF: null, forecastFollowingHighsF: [null, null, null],
  };
  const spanFor = (more: Partial<VisitRow>) => spanOfVisit(TUESDAY, visitAt({}, more), (on, minute) => instantOfMinute(on, minute, ZONE));
  expect(spanFor({ stop })).toEqual({ fromEpochMilliseconds: at("2026-04-14T07:30-04:00"), untilEpochMilliseconds: at("2026-04-14T08:00-04:00") });
  expect(spanFor({ stop: { ...stop, arrivesAtMinute: null } }).fromEpochMilliseconds).toBe(at("2026-04-14T07:00-04:00"));
  expect(spanFor({}).fromEpochMilliseconds).toBe(at("2026-04-14T09:00-04:00"));
  expect(spanFor({ stop: { ...stop, arrivesAtMinute: 1500 } })).toEqual({ fromEpochMilliseconds: at("2026-04-14T23:59-04:00"), untilEpochMilliseconds: at("2026-04-15T00:29-04:00") });
});
