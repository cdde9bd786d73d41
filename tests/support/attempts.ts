// Every use case of a signed-in member with an input that it accepts: tests of what holds for all of them walk this.
import { type SessionKey } from "#adapters/postgres/company-work";
import { changePassword } from "#application/accounts/change-password";
import { issueResetLink } from "#application/accounts/issue-reset-link";
import { changeCompany } from "#application/companies/change-company";
import { readCompany } from "#application/companies/read-company";
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
import { addEquipment } from "#application/equipment/add-equipment";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { addVehicle } from "#application/equipment/add-vehicle";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { changeEquipment } from "#application/equipment/change-equipment";
import { changeVehicle } from "#application/equipment/change-vehicle";
import { listEquipment } from "#application/equipment/list-equipment";
import { readCalibration } from "#application/equipment/read-calibration";
import { readEquipment } from "#application/equipment/read-equipment";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { standDownMeasuringTool } from "#application/equipment/stand-down-measuring-tool";
import { standDownVehicle } from "#application/equipment/stand-down-vehicle";
import { addLicense } from "#application/people/add-license";
import { addPerson } from "#application/people/add-person";
import { changePerson } from "#application/people/change-person";
import { changeRole } from "#application/people/change-role";
import { endMembership } from "#application/people/end-membership";
import { invitePerson } from "#application/people/invite-person";
import { listPeople } from "#application/people/list-people";
import { readPerson } from "#application/people/read-person";
import { withdrawInvitation } from "#application/people/withdraw-invitation";
import { withdrawLicense } from "#application/people/withdraw-license";
import { addProduct } from "#application/products/add-product";
import { confirmLabel } from "#application/products/confirm-label";
import { enterLabel } from "#application/products/enter-label";
import { listProducts } from "#application/products/list-products";
import { readProduct } from "#application/products/read-product";
import { retireProduct } from "#application/products/retire-product";
import { listMovements } from "#application/stock/list-movements";
import { listStock } from "#application/stock/list-stock";
import { moveStock } from "#application/stock/move-stock";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type UseCaseName } from "#application/permission";
import { listFills } from "#application/fills/list-fills";
import { readPlannedFill } from "#application/fills/read-planned-fill";
import { recordFill } from "#application/fills/record-fill";
import { completeVisit } from "#application/register/complete-visit";
import { listRecordsOfProperty } from "#application/register/list-records-of-property";
import { listRegister } from "#application/register/list-register";
import { previewRecord } from "#application/register/preview-record";
import { readRecord } from "#application/register/read-record";
import { readRecordPlan } from "#application/register/read-record-plan";
import { answerHold } from "#application/visits/answer-hold";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { readVisit } from "#application/visits/read-visit";
import { addClient } from "#application/properties/add-client";
import { addProperty } from "#application/properties/add-property";
import { addSoilTest } from "#application/properties/add-soil-test";
import { addStation } from "#application/properties/add-station";
import { addWaterEdge } from "#application/properties/add-water-edge";
import { addZone } from "#application/properties/add-zone";
import { changeClient } from "#application/properties/change-client";
import { changeProperty } from "#application/properties/change-property";
import { changeStation } from "#application/properties/change-station";
import { changeZone } from "#application/properties/change-zone";
import { checkCustomerList } from "#application/properties/check-customer-list";
import { importCustomers } from "#application/properties/import-customers";
import { listProperties } from "#application/properties/list-properties";
import { measureZone } from "#application/properties/measure-zone";
import { readCustomerList } from "#application/properties/read-customer-list";
import { readProperty } from "#application/properties/read-property";
import { removeWaterEdge } from "#application/properties/remove-water-edge";
import { removeZone } from "#application/properties/remove-zone";
import { addProgram } from "#application/programs/add-program";
import { addRound } from "#application/programs/add-round";
import { changeRound } from "#application/programs/change-round";
import { listPrograms } from "#application/programs/list-programs";
import { putOnProgram } from "#application/programs/put-on-program";
import { readProgram } from "#application/programs/read-program";
import { removeRound } from "#application/programs/remove-round";
import { callOffVisit } from "#application/visits/call-off-visit";
import { changeVisitTask } from "#application/visits/change-visit-task";
import { listVisits } from "#application/visits/list-visits";
import { planVisit } from "#application/visits/plan-visit";
import { readVisitPlan } from "#application/visits/read-visit-plan";
import { type UseCaseRefusal } from "#application/refusal";
import { type House, type UseCase } from "#application/use-case";
import { type Outcome } from "#domain/foundation/outcome";
import { aMember, aPerson, anInvitation, PASSWORD, type TestCompany, type TestMember, valueOf } from "./crew";
import { aDayOf, aRouteDay, aShop, aVisit as anOpenVisit, DAY, routeDayForm, SHOP, versionOf } from "./days";
import { aDayOfActor, aPaperFor, aPrintedRecord } from "./documents";
import {
  aCalibration, aMeasuringTool, aProduct, aSprayer, aSpreader, aVehicle, MEASURING_TOOL_FORM, sprayerCalibrationForm, sprayerForm,
  spreaderCalibrationForm, vehicleForm,
} from "./gear";
import { aCrewDay, aFedVisit, aRecord, aVisitUnderHold, completeForm, type CrewDay, fillForm } from "./crew-day";
import { type TestHouse } from "./house";
import { aClient, aRow, aStation, aWaterEdge, aZone, clientForm, propertyForm, RECTANGLE, soilTestForm, stationForm, zoneForm } from "./ground";
import { aLabeledFeed, aPlannedVisit, aProgram, aRound, programForm, roundForm, visitForm } from "./season";
import { aDelivery, aFeed, aLabelEntry, aTruck, deliveryForm, labelForm, lotOf, moveForm, productForm } from "./shed";

export interface Attempt {
  readonly useCaseName: UseCaseName;
  /** An input that is accepted now, once; what it needs has been written to the company's books. */
  readonly input: Readonly<Record<string, unknown>>;
  /** Calls the use case with anything, as a browser may. */
  readonly run: (house: House, key: SessionKey, input: unknown) => Promise<Outcome<unknown, UseCaseRefusal>>;
}

function attempt<Input extends Readonly<Record<string, unknown>>, Answer>(useCase: UseCase<Input, Answer>, input: Input): Attempt {
  return { useCaseName: useCase.useCaseName, input, run: (house, key, anything) => useCase(house, key, anything as Input) };
}

/** Makes ready what an attempt needs; some inputs name the member who will make it, who is the owner unless said. */
type Prepare = (house: TestHouse, company: TestCompany, actor?: TestMember) => Attempt | Promise<Attempt>;

let members = 0;
const aPasserBy = (house: TestHouse, company: TestCompany) => aMember(house, company, "technician", `Passer-by ${String((members += 1))}`);

/** The license form, filled in; each number is used once. */
export function licenseForm(personId: string) {
  const number = `L-${String((members += 1))}`;
  return { personId, kind: "registered-technician", state: "IN", number, category: "3b Turf", issuedOn: "2026-01-02", expiresOn: "2026-12-31" } as const;
}

/** The company form, as it is filled in when nobody has changed the company yet. */
export const COMPANY_CHANGE = {
  version: 1,
  name: "Foxtail Turf and Trees",
  state: "IL",
  timeZone: "America/Chicago",
  phone: "317 555 0142",
  address: "12 Clover Court, Millbrook, IN",
  businessLicenseNumber: "B-77",
  businessLicenseExpiresOn: "2026-12-31",
  insuranceExpiresOn: "2026-09-30",
} as const;

const crewDays = new WeakMap<TestCompany, Promise<CrewDay>>();

/** One crew's day for all attempts of a company. */
function crewDayOf(house: TestHouse, company: TestCompany): Promise<CrewDay> {
  const day = crewDays.get(company) ?? aCrewDay(house, company);
  crewDays.set(company, day);
  return day;
}

/** One for each use case that the permissions name: the compiler asks for the missing one. */
export const ATTEMPTS: Readonly<Record<UseCaseName, Prepare>> = {
  "accounts/change-password": () => attempt(changePassword, { present: PASSWORD, next: "five other words in a row" }),
  "accounts/issue-reset-link": async (house, company) =>
    attempt(issueResetLink, { personId: (await aPasserBy(house, company)).personId }),
  "companies/change-company": () => attempt(changeCompany, COMPANY_CHANGE),
  "companies/read-company": () => attempt(readCompany, {}),
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
  "equipment/add-equipment": async (house, company) => attempt(addEquipment, sprayerForm(await aVehicle(house, company))),
  "equipment/add-measuring-tool": () => attempt(addMeasuringTool, MEASURING_TOOL_FORM),
  "equipment/add-vehicle": () => attempt(addVehicle, vehicleForm()),
  "equipment/calibrate-sprayer": async (house, company, actor = company.owner) =>
    attempt(calibrateSprayer, sprayerCalibrationForm(await aSprayer(house, company), actor.personId)),
  "equipment/calibrate-spreader": async (house, company, actor = company.owner) =>
    attempt(calibrateSpreader, spreaderCalibrationForm(await aSpreader(house, company), actor.personId, await aProduct(house, company))),
  "equipment/change-equipment": async (house, company) => {
    const vehicleId = await aVehicle(house, company);
    return attempt(changeEquipment, { equipmentId: await aSprayer(house, company), version: 1, ...sprayerForm(vehicleId), name: "The other tank" });
  },
  "equipment/change-vehicle": async (house, company) =>
    attempt(changeVehicle, { vehicleId: await aVehicle(house, company), version: 1, ...vehicleForm() }),
  "equipment/list-equipment": () => attempt(listEquipment, {}),
  "equipment/read-calibration": async (house, company) =>
    attempt(readCalibration, { calibrationId: await aCalibration(house, company, await aSprayer(house, company)) }),
  "equipment/read-equipment": async (house, company) => attempt(readEquipment, { equipmentId: await aSprayer(house, company) }),
  "equipment/stand-down-equipment": async (house, company) => attempt(standDownEquipment, { equipmentId: await aSprayer(house, company) }),
  "equipment/stand-down-measuring-tool": async (house, company) =>
    attempt(standDownMeasuringTool, { measuringToolId: await aMeasuringTool(house, company) }),
  "equipment/stand-down-vehicle": async (house, company) => attempt(standDownVehicle, { vehicleId: await aVehicle(house, company) }),
  "people/add-license": async (house, company) => attempt(addLicense, licenseForm(await aPerson(house, company))),
  "people/add-person": () => attempt(addPerson, { name: "Robin Vale", phone: "317 555 0100" }),
  "people/change-person": async (house, company) =>
    attempt(changePerson, { personId: await aPerson(house, company), version: 1, name: "Robin Dale", phone: "", leftOn: "2026-04-01" }),
  "people/change-role": async (house, company) =>
    attempt(changeRole, { personId: (await aPasserBy(house, company)).personId, role: "office" }),
  "people/end-membership": async (house, company) => attempt(endMembership, { personId: (await aPasserBy(house, company)).personId }),
  "people/invite-person": async (house, company) =>
    attempt(invitePerson, { personId: await aPerson(house, company), email: "robin@vale.example", role: "applicator" }),
  "people/list-people": () => attempt(listPeople, {}),
  "people/read-person": (_house, company) => attempt(readPerson, { personId: company.owner.personId }),
  "people/withdraw-invitation": async (house, company) => {
    const { invitationId } = await anInvitation(house, company, await aPerson(house, company), "someone@vale.example");
    return attempt(withdrawInvitation, { invitationId });
  },
  "people/withdraw-license": async (house, company) => {
    const license = await addLicense(house, company.owner.key, licenseForm(await aPerson(house, company)));
    return attempt(withdrawLicense, { licenseId: valueOf(license).licenseId });
  },
  "properties/add-client": () => attempt(addClient, clientForm()),
  "properties/add-property": async (house, company) => {
    const { street, city, state, zip } = clientForm();
    return attempt(addProperty, { clientId: (await aClient(house, company)).clientId, street, city, state, zip });
  },
  "properties/add-soil-test": async (house, company) => attempt(addSoilTest, soilTestForm((await aZone(house, company)).zoneId)),
  "properties/add-station": async (house, company) => attempt(addStation, { propertyId: (await aClient(house, company)).propertyId, ...stationForm() }),
  "properties/add-water-edge": async (house, company) =>
    attempt(addWaterEdge, { zoneId: (await aZone(house, company)).zoneId, name: "Pond", length: "60 ft", width: "" }),
  "properties/add-zone": async (house, company) =>
    attempt(addZone, { propertyId: (await aClient(house, company)).propertyId, ...zoneForm(), measure: { kind: "piece" as const, piece: RECTANGLE } }),
  "properties/change-client": async (house, company) => {
    const { clientId } = await aClient(house, company);
    return attempt(changeClient, { clientId, version: 1, name: "Avery Dale", phone: "", email: "", standing: "paused" });
  },
  "properties/change-property": async (house, company) => attempt(changeProperty, propertyForm((await aClient(house, company)).propertyId)),
  "properties/change-station": async (house, company) => {
    const { stationId } = await aStation(house, company);
    return attempt(changeStation, { stationId, version: 1, ...stationForm(), name: "Back" });
  },
  "properties/change-zone": async (house, company) =>
    attempt(changeZone, { zoneId: (await aZone(house, company)).zoneId, version: 1, ...zoneForm(), name: "Back" }),
  "properties/check-customer-list": () => attempt(checkCustomerList, { rows: [aRow()] }),
  "properties/import-customers": (house) => attempt(importCustomers, { listId: house.newId(), rows: [aRow()] }),
  "properties/list-properties": () => attempt(listProperties, {}),
  "properties/measure-zone": async (house, company) => {
    const { zoneId } = await aZone(house, company);
    return attempt(measureZone, { zoneId, version: 1, change: { kind: "enter-area" as const, area: "1,200 sq ft" } });
  },
  "properties/read-customer-list": () => attempt(readCustomerList, { text: "Customer,Street\nAvery Thorn,4 Sorrel Lane" }),
  "properties/read-property": async (house, company) => attempt(readProperty, { propertyId: (await aClient(house, company)).propertyId }),
  "properties/remove-water-edge": async (house, company) => attempt(removeWaterEdge, { waterEdgeId: await aWaterEdge(house, company) }),
  "properties/remove-zone": async (house, company) => attempt(removeZone, { zoneId: (await aZone(house, company)).zoneId }),
  "products/add-product": () => attempt(addProduct, productForm()),
  "products/confirm-label": async (house, company) =>
    attempt(confirmLabel, { labelEntryId: (await aLabelEntry(house, company, await aFeed(house, company))).labelEntryId }),
  "products/enter-label": async (house, company) => attempt(enterLabel, labelForm(await aFeed(house, company))),
  "products/list-products": () => attempt(listProducts, {}),
  "products/read-product": async (house, company) => attempt(readProduct, { productId: await aFeed(house, company) }),
  "products/retire-product": async (house, company) => attempt(retireProduct, { productId: await aFeed(house, company), version: 1 }),
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
  "stock/list-movements": async (house, company) => attempt(listMovements, { productId: await aFeed(house, company) }),
  "stock/list-stock": () => attempt(listStock, {}),
  "stock/move-stock": async (house, company) => {
    const productId = await aFeed(house, company);
    await aDelivery(house, company, productId);
    const lotId = await lotOf(house, productId);
    return attempt(moveStock, { ...moveForm(house, productId, `vehicle:${await aTruck(house, company)}`), lotId });
  },
  "stock/receive-delivery": async (house, company) => attempt(receiveDelivery, deliveryForm(house, await aFeed(house, company))),
  "visits/call-off-visit": async (house, company) =>
    attempt(callOffVisit, { visitId: (await aPlannedVisit(house, company)).visitId, version: 1, reason: "The customer asked" }),
  "visits/change-visit-task": async (house, company) => {
    const { visitId, zoneId } = await aPlannedVisit(house, company);
    return attempt(changeVisitTask, { visitId, version: 1, line: 1, rate: "2 lb/1,000 sq ft", lawns: { [zoneId]: "yes" as const }, equipmentId: "" });
  },
  "visits/list-visits": () => attempt(listVisits, {}),
  "visits/plan-visit": async (house, company) =>
    attempt(planVisit, visitForm(house, { ...(await aZone(house, company)), productId: await aLabeledFeed(house, company) })),
  "visits/read-visit-plan": async (house, company) => attempt(readVisitPlan, { visitId: (await aPlannedVisit(house, company)).visitId }),
  "fills/list-fills": () => attempt(listFills, {}),
  "fills/read-planned-fill": async (house, company) =>
    attempt(readPlannedFill, { visitIds: [(await aFedVisit(house, company, await crewDayOf(house, company))).visitId] }),
  "fills/record-fill": async (house, company) => attempt(recordFill, fillForm(house, await crewDayOf(house, company), [])),
  "register/complete-visit": async (house, company, actor = company.owner) =>
    attempt(completeVisit, completeForm(house, actor.personId, await aFedVisit(house, company, await crewDayOf(house, company)))),
  "register/list-records-of-property": async (house, company) => attempt(listRecordsOfProperty, { propertyId: (await aClient(house, company)).propertyId }),
  "register/preview-record": async (house, company, actor = company.owner) =>
    attempt(previewRecord, completeForm(house, actor.personId, await aFedVisit(house, company, await crewDayOf(house, company)))),
  "register/read-record-plan": async (house, company) =>
    attempt(readRecordPlan, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
  "register/list-register": () => attempt(listRegister, {}),
  "register/read-record": async (house, company) => {
    const { registerEntryId } = await aRecord(house, company.owner, await aFedVisit(house, company, await crewDayOf(house, company)));
    return attempt(readRecord, { registerEntryId });
  },
  "visits/answer-hold": async (house, company, actor = company.owner) => {
    const { visitId, rule } = await aVisitUnderHold(house, company, await crewDayOf(house, company));
    const license = { ...licenseForm(actor.personId), kind: "certified-applicator", state: "IL" } as const;
    const { licenseId } = valueOf(await addLicense(house, company.owner.key, license));
    return attempt(answerHold, { visitId, rule, licenseId, reason: "A soil test of last week is on its way to the file." });
  },
  "visits/issue-mix-ticket": async (house, company) =>
    attempt(issueMixTicket, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
  "visits/read-visit": async (house, company) => attempt(readVisit, { visitId: (await aFedVisit(house, company, await crewDayOf(house, company))).visitId }),
};

/** The names of all use cases of a member. */
export const USE_CASE_NAMES = Object.keys(ATTEMPTS) as readonly UseCaseName[];

/** Those that only read, by their verb. */
export const READING: ReadonlySet<UseCaseName> = new Set(USE_CASE_NAMES.filter((name) => /\/(?:read|list|check|preview)-/u.test(name)));
