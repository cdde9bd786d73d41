import { expect, test } from "vitest";
import { cleanOutsOfDay } from "#application/days/clean-outs-of-day";
import { aCompany } from "../../support/crew";
import { aCleanOut, aFedVisit, aFill, aRecord, inWorkOf } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

const namedOn = (visitIds: readonly string[]) => inWorkOf(house, company, (work) => cleanOutsOfDay(work, visitIds));
const visit = () => aFedVisit(house, company, day);
const fill = (visitIds: readonly string[], filledAt: string) => aFill(house, company, day, visitIds, { filledAt });
const cleanOut = (cleanedAt: string) => aCleanOut(house, company, day, { cleanedAt });

test("between two fills of a day it stands before the first visit of the second one, while those of the first are open", async () => {
  const [one, two, three] = [await visit(), await visit(), await visit()];
  const route = [one.visitId, two.visitId, three.visitId];
  await fill([one.visitId], "7:00");
  await cleanOut("7:20");
  await fill([two.visitId, three.visitId], "7:30");
  expect(await namedOn(route)).toEqual(new Map([[day.sprayerId, new Set([two.visitId])]]));
  expect(await namedOn(route.toReversed()), "the earlier fill's visit comes last").toEqual(new Map());
  expect(await namedOn([two.visitId, three.visitId]), "the earlier fill's visit is of another day").toEqual(new Map());
  await aRecord(house, company.owner, one);
  expect(await namedOn(route), "the earlier fill's visit is recorded").toEqual(new Map());
});

test("none is named where nothing was cleaned out between the fills", async () => {
  const [one, two] = [await visit(), await visit()];
  await cleanOut("6:50");
  await fill([one.visitId], "7:00");
  await fill([two.visitId], "7:30");
  await cleanOut("7:40");
  expect(await namedOn([one.visitId, two.visitId])).toEqual(new Map());
});

test("a day without visits and another company have none", async () => {
  const one = await visit();
  await fill([one.visitId], "7:00");
  expect(await namedOn([])).toEqual(new Map());
  const other = await aCompany(house);
  expect(await inWorkOf(house, other, (work) => cleanOutsOfDay(work, [one.visitId]))).toEqual(new Map());
});
