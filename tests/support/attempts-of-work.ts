// Attempts with the work of a season: programs, visits, days, fills, papers, records.
import { addRouteDay } from "#application/days/add-route-day";
import { changeRouteDay } from "#application/days/change-route-day";
import { enterForecast } from "#application/days/enter-forecast";
import { moveVisit } from "#application/days/move-visit";
import { orderDay } from "#application/days/order-day";
import { pinVisit } from "#application/days/pin-visit";
import { placeVisit } from "#application/days/place-visit";
import { readDay } from "#application/days/read-day";
import { restoreOrder } from "#application/days/restore-order";
import { setShopPosition } from "#application/days/set-shop-position";
import { takeOffDay } from "#application/days/take-off-day";
import { printApplicationRecord } from "#application/documents/print-application-record";
import { printCustomerNotice } from "#application/documents/print-customer-notice";
import { printLoadingList } from "#application/documents/print-loading-list";
import { printMixTicket } from "#application/documents/print-mix-ticket";
import { printPacket } from "#application/documents/print-packet";
import { printPostingSign } from "#application/documents/print-posting-sign";
import { printRouteSheet } from "#application/documents/print-route-sheet";
import { readIssuedPaper } from "#application/documents/read-issued-paper";
import { readPacket } from "#application/documents/read-packet";
import { readPaperToPrint } from "#application/documents/read-paper-to-print";
import { addLicense } from "#application/people/add-license";
import { listFills } from "#application/fills/list-fills";
import { readFillOfDay } from "#application/fills/read-fill-of-day";
import { readPlannedFill } from "#application/fills/read-planned-fill";
import { previewCleanOut } from "#application/fills/preview-clean-out";
import { previewFill } from "#application/fills/preview-fill";
import { previewTankReading } from "#application/fills/preview-tank-reading";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { recordFill } from "#application/fills/record-fill";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { completeVisit } from "#application/register/complete-visit";
import { listRecordsOfProperty } from "#application/register/list-records-of-property";
import { listRegister } from "#application/register/list-register";
import { previewRecord } from "#application/register/preview-record";
import { readRecord } from "#application/register/read-record";
import { readRecordPlan } from "#application/register/read-record-plan";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { addProgram } from "#application/programs/add-program";
import { addRound } from "#application/programs/add-round";
import { changeRound } from "#application/programs/change-round";
import { listPrograms } from "#application/programs/list-programs";
import { putOnProgram } from "#application/programs/put-on-program";
import { readProgram } from "#application/programs/read-program";
import { removeRound } from "#application/programs/remove-round";
import { callOffVisit } from "#application/visits/call-off-visit";
import { changeVisitTask } from "#application/visits/change-visit-task";
import { lookAtLawns } from "#application/visits/look-at-lawns";
import { listVisits } from "#application/visits/list-visits";
import { planVisit } from "#application/visits/plan-visit";
import { readVisitPlan } from "#application/visits/read-visit-plan";
import { type TestCompany, valueOf } from "./crew";
import { aDayOf, aRouteDay, aShop, aVisit as anOpenVisit, DAY, routeDayForm, SHOP, versionOf } from "./days";
import { aDayOfActor, aPaperFor, aPrintedRecord } from "./documents";
import { aCrewDay, aFedVisit, aRecord, aVisitUnderHold, cleanOutForm, completeForm, type CrewDay, fillForm, lookForm, tankReadingForm } from "./crew-day";
import { aSprayer } from "./gear";
import { type TestHouse } from "./house";
import { aClient, aZone } from "./ground";
import { aLabeledFeed, aPlannedVisit, aProgram, aRound, programForm, roundForm, visitForm } from "./season";
import { attempt, type Prepare } from "./attempt";
import { licenseForm } from "./attempts-of-company";

const crewDays = new WeakMap<TestCompany, Promise<CrewDay>>();

/** One crew's day for all attempts of a company. */
function crewDayOf(house: TestHouse, company: TestCompany): Promise<CrewDay> {
  const day = crewDays.get(company) ?? aCrewDay(house, company);
  crewDays.set(company, day);
  return day;
}

export const ATTEMPTS_OF_WORK = {
  "programs/add-program": () => attempt(addProgram, programForm()),
  "programs/add-round": async (house, company) =>
    attempt(addRound, roundForm(await aProgram(house, company), await aLabeledFeed(house, company))),
  "programs/change-round": async (house, company) => {
    const { roundId } = await aRound(house, company);
    return attempt(changeRound, { roundId, version: 1, name: "Late feed", opensOn: "2026-05-01", closesOn: "2026-05-20" });
  },
  "programs/list-programs": () => attempt(listPrograms, {}),
  "programs/put-on-program": async (house, company) => {
    const { programId } = await aRound(house, company);
    return attempt(putOnProgram, { programId, properties: { [(await aZone(house, company)).propertyId]: "yes" as const } });
  },
  "programs/read-program": async (house, company) => attempt(readProgram, { programId: await aProgram(house, company) }),
  "programs/remove-round": async (house, company) => attempt(removeRound, { roundId: (await aRound(house, company)).roundId }),
  "visits/answer-hold": async (house, company, actor = company.owner) => {
    const { visitId, hold } = await aVisitUnderHold(house, company, await crewDayOf(house, company));
    const license = { ...licenseForm(actor.personId), kind: "certified-applicator", state: "IL" } as const;
    const { licenseId } = valueOf(await addLicense(house, company.owner.key, license));
    return attempt(answerHold, { visitId, hold, licenseId, reason: "A soil test of last week is on its way to the file." });
  },
  "visits/call-off-visit": async (house, company) =>
    attempt(callOffVisit, { visitId: (await aPlannedVisit(house, company)).visitId, version: 1, reason: "The customer asked" }),
  "visits/change-visit-task": async (house, company) => {
    const { visitId, zoneId } = await aPlannedVisit(house, company);
    return attempt(changeVisitTask, { visitId, version: 1, line: 1, rate: "2 lb/1,000 sq ft", lawns: { [zoneId]: "yes" as const }, equipmentId: "" });
  },
  "visits/issue-mix-ticket": async (house, company) =>
    attempt(issueMixTicket, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
  "visits/list-visits": () => attempt(listVisits, {}),
  "visits/look-at-lawns": async (house, company, actor = company.owner) =>
    attempt(lookAtLawns, lookForm(house, await aFedVisit(house, company, await crewDayOf(house, company)), actor.personId)),
  "visits/plan-visit": async (house, company) =>
    attempt(planVisit, visitForm(house, { ...(await aZone(house, company)), productId: await aLabeledFeed(house, company) })),
  "visits/read-visit": async (house, company) => attempt(readVisit, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
  "visits/read-visit-plan": async (house, company) => attempt(readVisitPlan, { visitId: (await aPlannedVisit(house, company)).visitId }),
  "days/add-route-day": async (house, company) => attempt(addRouteDay, await routeDayForm(house, company)),
  "days/change-route-day": async (house, company) =>
    attempt(changeRouteDay, { routeDayId: await aRouteDay(house, company), version: 1, operatorId: company.owner.personId, startsAt: "07:00", endsAt: "15:00" }),
  "days/enter-forecast": async (house, company) => {
    await aRouteDay(house, company);
    return attempt(enterForecast, { date: DAY, highF: "71", source: "National Weather Service" });
  },
  "days/move-visit": async (house, company) => {
    const { routeDayId, visitIds } = await aDayOf(house, company, [{}, {}]);
    return attempt(moveVisit, { visitId: visitIds[1] ?? "", routeDayId, position: "1" });
  },
  "days/order-day": async (house, company) => {
    await aShop(house, company);
    const { routeDayId } = await aDayOf(house, company, [{}]);
    return attempt(orderDay, { routeDayId, version: await versionOf(house, routeDayId) });
  },
  "days/pin-visit": async (house, company) => attempt(pinVisit, { visitId: (await aDayOf(house, company, [{}])).visitIds[0] ?? "", pin: "pin" as const }),
  "days/place-visit": async (house, company) =>
    attempt(placeVisit, { visitId: (await anOpenVisit(house, company)).visitId, routeDayId: await aRouteDay(house, company) }),
  "days/read-day": () => attempt(readDay, { date: DAY }),
  "days/restore-order": async (house, company) => {
    const { routeDayId, visitIds } = await aDayOf(house, company, [{}, {}]);
    return attempt(restoreOrder, { routeDayId, version: await versionOf(house, routeDayId), order: visitIds.toReversed().join(" ") });
  },
  "days/set-shop-position": () => attempt(setShopPosition, { zip: "", ...SHOP }),
  "days/take-off-day": async (house, company) => attempt(takeOffDay, { visitId: (await aDayOf(house, company, [{}])).visitIds[0] ?? "" }),
  "fills/list-fills": () => attempt(listFills, {}),
  "fills/read-fill-of-day": async (house, company) => attempt(readFillOfDay, { routeDayId: await aRouteDay(house, company), letter: "A", visitIds: [] }),
  "fills/read-planned-fill": async (house, company) =>
    attempt(readPlannedFill, { visitIds: [(await aFedVisit(house, company, await crewDayOf(house, company))).visitId] }),
  "fills/preview-clean-out": async (house, company) => attempt(previewCleanOut, cleanOutForm(house, await crewDayOf(house, company), company.owner.personId)),
  "fills/preview-fill": async (house, company) => attempt(previewFill, fillForm(house, await crewDayOf(house, company), [])),
  "fills/preview-tank-reading": async (house, company) => attempt(previewTankReading, tankReadingForm(house, { sprayerId: await aSprayer(house, company) }, company.owner.personId)),
  "fills/record-clean-out": async (house, company) => attempt(recordCleanOut, cleanOutForm(house, await crewDayOf(house, company), company.owner.personId)),
  "fills/record-fill": async (house, company) => attempt(recordFill, fillForm(house, await crewDayOf(house, company), [])),
  "fills/record-tank-reading": async (house, company) => attempt(recordTankReading, tankReadingForm(house, { sprayerId: await aSprayer(house, company) }, company.owner.personId)),
  "documents/print-application-record": async (house, company) =>
    attempt(printApplicationRecord, { registerEntryId: await aPrintedRecord(house, company) }),
  "documents/print-customer-notice": async (house, company, actor = company.owner) => attempt(printCustomerNotice, { visitId: (await aDayOfActor(house, company, actor)).visitId }),
  "documents/print-loading-list": async (house, company, actor = company.owner) => attempt(printLoadingList, { routeDayId: (await aDayOfActor(house, company, actor)).routeDayId }),
  "documents/print-mix-ticket": async (house, company, actor = company.owner) => attempt(printMixTicket, { mixTicketId: (await aDayOfActor(house, company, actor)).mixTicketId }),
  "documents/print-packet": async (house, company, actor = company.owner) => attempt(printPacket, { routeDayId: (await aDayOfActor(house, company, actor)).routeDayId }),
  "documents/print-posting-sign": async (house, company, actor = company.owner) => attempt(printPostingSign, { visitId: (await aDayOfActor(house, company, actor)).visitId }),
  "documents/print-route-sheet": async (house, company, actor = company.owner) => attempt(printRouteSheet, { routeDayId: (await aDayOfActor(house, company, actor)).routeDayId }),
  "documents/read-issued-paper": async (house, company, actor = company.owner) =>
    attempt(readIssuedPaper, { issuedPaperId: (await aPaperFor(house, company, actor)).issuedPaperId }),
  "documents/read-packet": async (house, company, actor = company.owner) => attempt(readPacket, { routeDayId: (await aDayOfActor(house, company, actor)).routeDayId }),
  "documents/read-paper-to-print": async (house, company, actor = company.owner) => {
    const { kind, subjectId } = await aPaperFor(house, company, actor);
    return attempt(readPaperToPrint, { kind, subjectId });
  },
  "register/complete-visit": async (house, company, actor = company.owner) =>
    attempt(completeVisit, completeForm(house, actor.personId, await aFedVisit(house, company, await crewDayOf(house, company)))),
  "register/list-records-of-property": async (house, company) => attempt(listRecordsOfProperty, { propertyId: (await aClient(house, company)).propertyId }),
  "register/list-register": () => attempt(listRegister, {}),
  "register/preview-record": async (house, company, actor = company.owner) =>
    attempt(previewRecord, completeForm(house, actor.personId, await aFedVisit(house, company, await crewDayOf(house, company)))),
  "register/read-record": async (house, company) => {
    const { registerEntryId } = await aRecord(house, company.owner, await aFedVisit(house, company, await crewDayOf(house, company)));
    return attempt(readRecord, { registerEntryId });
  },
  "register/read-record-plan": async (house, company) =>
    attempt(readRecordPlan, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
} satisfies Readonly<Record<string, Prepare>>;
