import { expect, test } from "vitest";
import { aftercareOfRecord, spanOfRecord } from "#application/visits/record-aftercare";
import { visitRows } from "#application/visits/visit-rows";
import { valueOf } from "../../support/crew";
import { aFedVisit, aGround, aRecord, aVisitWith, type Ground, inWorkOf, preventer } from "../../support/crew-day";
import { rowOf } from "../../support/aftercare-builders";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { CONTENT } from "../../support/recorded";

allOnACrewDay();

type Visited = Ground & { readonly visitId: string };
const DONE = { fromEpochMilliseconds: Date.parse("2026-04-14T12:00Z"), untilEpochMilliseconds: Date.parse("2026-04-14T12:45Z") };

const careOf = ({ visitId }: Visited) =>
  inWorkOf(house, company, async (work) => {
    const [visit] = await visitRows(work, [visitId]);
    if (visit === undefined) throw new Error("the visit is on file");
    return valueOf(await aftercareOfRecord(work, visit, DONE));
  });

test("the span is that of the record's own times", () => {
  expect(spanOfRecord(CONTENT)).toEqual({ fromEpochMilliseconds: Date.parse("2026-04-14T12:50Z"), untilEpochMilliseconds: Date.parse("2026-04-14T13:09Z") });
});

test("times count from the real work, and a lawn that was not reached has no aftercare", async () => {
  const fed = await aFedVisit(house, company, day);
  await aRecord(house, company.owner, fed, { lawns: { [fed.frontId]: "done", [fed.backId]: "not-done" } });
  const groups = await careOf(fed);
  expect(groups.map(({ lawnNames }) => lawnNames)).toEqual([["Front"]]);
  // The iron must stay dry for twelve hours after the work, which ended at 8:45 in the morning.
  expect(rowOf(groups[0]?.timeline.steps ?? [], "watering")[0]).toEqual(["may-not", "2026-04-14T12:00", "2026-04-15T00:45"]);
});

test("a product that was left out in fact asks for nothing", async () => {
  const fed = await aFedVisit(house, company, day);
  const nothing = { measuredBy: "meter", amount: "0 gal", fillId: "" } as const;
  await aRecord(house, company.owner, fed, { mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": nothing } });
  const named = (await careOf(fed)).flatMap(({ timeline }) => timeline.steps.flatMap(({ reasons }) => reasons.map(({ productName }) => productName)));
  expect(named.some((name) => name.startsWith("Greenmere"))).toBe(true);
  expect(named.some((name) => name.startsWith("Ironside"))).toBe(false);
});

test("what was put down before still counts, and what came later does not", async () => {
  const ground = await aGround(house, company);
  const visited = async (change: Parameters<typeof aRecord>[3]) => {
    const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
    await aRecord(house, company.owner, { ...ground, visitId }, { mixes: { "1": { measuredBy: "weight", amount: "16 lb" } }, ...change });
    return { ...ground, visitId };
  };
  await visited({ doneOn: "2026-04-12" });
  const middle = await visited({ lawns: { [ground.frontId]: "done", [ground.backId]: "not-done" } });
  await visited({ startedAt: "8:50", endedAt: "8:55" });
  const [only] = await careOf(middle);
  expect([...new Set(only?.timeline.steps.filter(({ row }) => row === "people-and-pets").flatMap(({ reasons }) => reasons.map(({ productName }) => productName.replace(/ \d+/u, ""))))]).toEqual(["Greenmere (put down Sunday, Apr 12, 2026)", "Greenmere"]);
});

test("two records of one stop that cross, or have the same hours, each say what the other put down, and none counts itself", async () => {
  const ground = await aGround(house, company);
  const visited = async (change: Parameters<typeof aRecord>[3]) => {
    const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, preventer(day, ground));
    await aRecord(house, company.owner, { ...ground, visitId }, { mixes: { "1": { measuredBy: "weight", amount: "16 lb" } }, ...change });
    return { ...ground, visitId };
  };
  const peopleAfter = async (visit: Visited) => {
    const [only] = await careOf(visit);
    return [...new Set(only?.timeline.steps.filter(({ row }) => row === "people-and-pets").flatMap(({ reasons }) => reasons.map(({ productName }) => productName.replace(/ \d+/u, ""))))];
  };
  const alone = await visited({});
  expect(await peopleAfter(alone)).toEqual(["Greenmere"]);
  const same = await visited({});
  const both = ["Greenmere", "Greenmere (put down Tuesday, Apr 14, 2026)"];
  expect([(await peopleAfter(alone)).toSorted(), (await peopleAfter(same)).toSorted()]).toEqual([both, both]);
});

test("a sign is to be left up where the record says that one was put up, and only there", async () => {
  const signs = async (signIsUp: "yes" | "no") => {
    const fed = await aFedVisit(house, company, day);
    await aRecord(house, company.owner, fed, { signIsUp });
    return (await careOf(fed)).flatMap(({ timeline }) => timeline.steps.filter(({ row }) => row === "sign").map(({ words }) => words));
  };
  expect(await signs("yes")).toContain("Leave the sign up.");
  expect(await signs("no")).toEqual([]);
});

test("a visit without a record has none", async () => {
  expect(await careOf(await aFedVisit(house, company, day))).toEqual([]);
});
