// Builders: a truck's day with everything that its visits hang on, made by the use cases themselves where there are some.
import { asGuest } from "#adapters/postgres/company-work";
import { addEquipment } from "#application/equipment/add-equipment";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { addMeasuringTool } from "#application/equipment/add-measuring-tool";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { type recordTankReading } from "#application/fills/record-tank-reading";
import { recordFill } from "#application/fills/record-fill";
import { addLicense } from "#application/people/add-license";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { addClient } from "#application/properties/add-client";
import { addZone } from "#application/properties/add-zone";
import { completeVisit } from "#application/register/complete-visit";
import { receiveDelivery } from "#application/stock/receive-delivery";
import { type Work } from "#application/use-case";
import { type lookAtLawns } from "#application/visits/look-at-lawns";
import { planVisit } from "#application/visits/plan-visit";
import { readVisit } from "#application/visits/read-visit";
import { answeredHold, textOfAnsweredHold } from "#domain/foundation/answered-hold";
import { type UsState } from "#domain/company/us-state";
import { type TestCompany, type TestMember, valueOf } from "./crew";
import { aVehicle, spreaderCalibrationForm, spreaderForm, sprayerCalibrationForm, sprayerForm } from "./gear";
import { clientForm, zoneForm } from "./ground";
import { type TestHouse } from "./house";
import { A_PREVENTER_TEXT, A_WHOLE_FEED_TEXT, A_WHOLE_IRON_TEXT } from "./label-texts";
import { aConfirmedLabel, aFeed, aLiquid, deliveryForm } from "./shed";

/** The day on which a test house opens. */
export const CREW_DAY = "2026-04-14";

export interface CrewDay {
  readonly vehicleId: string;
  readonly sprayerId: string;
  readonly spreaderId: string;
  readonly feedId: string;
  readonly ironId: string;
  readonly preventerId: string;
  /** A feed with phosphorus. */
  readonly starterId: string;
  readonly routeDayId: string;
  readonly illinoisLicenseId: string;
}

/** Does something within the company's transaction, as its owner. */
export function inWorkOf<Answer>(house: TestHouse, company: TestCompany, ask: (work: Work) => Promise<Answer>): Promise<Answer> {
  const { companyId, owner } = company;
  return asGuest(house.client, companyId, (tx) =>
    ask({
      tx,
      company: { companyId, name: "Foxtail Turf", state: "IN", timeZone: "America/Indiana/Indianapolis", isDemonstration: false },
      member: { accountId: owner.key.accountId, personId: owner.personId, personName: owner.name, role: "owner" },
      sessionVersion: 1,
      now: house.now(),
      newId: house.newId,
      newSecret: house.newSecret,
    }),
  );
}

/**
 * A truck with a 100 gal tank and a spreader, both calibrated by the owner; a feed, an iron and a preventer with
 * confirmed labels; lots on the truck and in the shop; a scale and a cup; a day with a forecast. The tank was cleaned out the
 * evening before, or nobody knows what it held.
 */
export async function aCrewDay(house: TestHouse, company: TestCompany, tank: "clean" | "not-known" = "clean"): Promise<CrewDay> {
  const { key, personId } = company.owner;
  const vehicleId = await aVehicle(house, company);
  const { equipmentId: sprayerId } = valueOf(await addEquipment(house, key, sprayerForm(vehicleId)));
  const { equipmentId: spreaderId } = valueOf(await addEquipment(house, key, spreaderForm(vehicleId)));
  const [feedId, preventerId, starterId] = [await aFeed(house, company), await aFeed(house, company), await aFeed(house, company)];
  const ironId = await aLiquid(house, company);
  await aConfirmedLabel(house, company, feedId, A_WHOLE_FEED_TEXT);
  await aConfirmedLabel(house, company, ironId, A_WHOLE_IRON_TEXT);
  await aConfirmedLabel(house, company, preventerId, A_PREVENTER_TEXT);
  await aConfirmedLabel(house, company, starterId, { ...A_WHOLE_FEED_TEXT, general: { ...A_WHOLE_FEED_TEXT.general, grade: "18-24-6", nitrogenRelease: "none" } });
  valueOf(await calibrateSprayer(house, key, sprayerCalibrationForm(sprayerId, personId)));
  valueOf(await calibrateSpreader(house, key, { ...spreaderCalibrationForm(spreaderId, personId, feedId), collected: "1.2 lb\n1.3 lb" }));
  valueOf(await calibrateSpreader(house, key, spreaderCalibrationForm(spreaderId, personId, preventerId)));
  valueOf(await calibrateSpreader(house, key, { ...spreaderCalibrationForm(spreaderId, personId, starterId), collected: "1.2 lb\n1.3 lb" }));
  valueOf(await addMeasuringTool(house, key, { name: "Scale", mark: "0.25 lb" }));
  valueOf(await addMeasuringTool(house, key, { name: "Cup", mark: "0.5 fl oz" }));
  const to = `vehicle:${vehicleId}`;
  await delivered(house, company, { ...deliveryForm(house, feedId), count: 1, lotNumber: "GM-1", expiresOn: "2026-09-30", to });
  await delivered(house, company, { ...deliveryForm(house, feedId), count: 4, lotNumber: "GM-2", expiresOn: "", to });
  await delivered(house, company, { ...deliveryForm(house, feedId), count: 12, lotNumber: "GM-3", expiresOn: "" });
  await delivered(house, company, { ...deliveryForm(house, preventerId), count: 10, lotNumber: "WD-1", to });
  await delivered(house, company, { ...deliveryForm(house, ironId), count: 2, container: "jug", containerSize: "2.5 gal", lotNumber: "IR-1", to });
  const license = { personId, kind: "certified-applicator", state: "IL", number: `IL-${sprayerId.slice(-4)}`, category: "Turf", issuedOn: "2026-01-02", expiresOn: "2026-12-31" } as const;
  const { licenseId: illinoisLicenseId } = valueOf(await addLicense(house, key, license));
  const routeDayId = await aRouteDay(house, company, vehicleId, CREW_DAY);
  const day = { vehicleId, sprayerId, spreaderId, feedId, ironId, preventerId, starterId, routeDayId, illinoisLicenseId };
  if (tank === "clean") await aCleanOut(house, company, day, { cleanedOn: "2026-04-13", cleanedAt: "17:00" });
  return day;
}

async function delivered(house: TestHouse, company: TestCompany, form: Parameters<typeof receiveDelivery>[2]) {
  valueOf(await receiveDelivery(house, company.owner.key, form));
}

/** A jug of 2.5 gal of a product, delivered to the truck. */
export async function aJug(house: TestHouse, company: TestCompany, day: CrewDay, productId: string, lotNumber = "L-1"): Promise<void> {
  await delivered(house, company, { ...deliveryForm(house, productId), count: 1, container: "jug", containerSize: "2.5 gal", lotNumber, to: `vehicle:${day.vehicleId}` });
}

/** A truck's day under the owner, with a forecast high of 68 °F and of 75, 74 and 72 °F for the days after. */
export async function aRouteDay(house: TestHouse, company: TestCompany, vehicleId: string, date: string, operatorId = company.owner.personId): Promise<string> {
  const routeDayId = house.newId();
  await house.ask(
    `insert into route_day (company_id, route_day_id, date, vehicle_id, operator_id, starts_at_minute, ends_at_minute, forecast_high_f, forecast_next_high_f, forecast_second_high_f, forecast_third_high_f, forecast_source, created_at)
     values ($1, $2, $3, $4, $5, 420, 1020, 68, 75, 74, 72, 'the radio', $6)`,
    [company.companyId, routeDayId, date, vehicleId, operatorId, house.now()],
  );
  return routeDayId;
}

export interface Ground {
  readonly propertyId: string;
  readonly frontId: string;
  readonly backId: string;
}

/** A property with a front lawn of 2,400 sq ft and a back lawn of 4,000. */
export async function aGround(house: TestHouse, company: TestCompany, state: UsState = "IN"): Promise<Ground> {
  const { key } = company.owner;
  const place = state === "IN" ? {} : { city: "Ironfork", zip: "60964" };
  const { propertyId } = valueOf(await addClient(house, key, { ...clientForm(), ...place, state }));
  const lawn = async (name: string, length: string, width: string) =>
    valueOf(await addZone(house, key, { propertyId, ...zoneForm(), name, measure: { kind: "piece", piece: { use: "lawn", shape: "rectangle", length, width } } })).zoneId;
  return { propertyId, frontId: await lawn("Front", "40 ft", "60 ft"), backId: await lawn("Back", "50 ft", "80 ft") };
}

let positions = 0;

/** Plans a visit with these tasks on a truck's day, 7:30 in the morning. */
export async function aVisitWith(house: TestHouse, company: TestCompany, on: { readonly propertyId: string; readonly routeDayId?: string }, tasks: Record<string, object>, secondLook = ""): Promise<string> {
  const visitId = house.newId();
  const form = { requestId: visitId, propertyId: on.propertyId, name: "Spring feed", opensOn: CREW_DAY, closesOn: "2026-04-24", customerFrom: "", customerUntil: "", secondLook, tasks };
  valueOf(await planVisit(house, company.owner.key, form));
  if (on.routeDayId !== undefined) {
    await house.ask("insert into stop (company_id, visit_id, route_day_id, position, arrives_at_minute) values ($1, $2, $3, $4, 450)", [company.companyId, visitId, on.routeDayId, (positions += 1)]);
  }
  return visitId;
}

/** The tasks of feed by hand and iron by tank, on both lawns. */
export function feedAndIron({ feedId, ironId }: CrewDay, { frontId, backId }: Ground) {
  const lawns = { [frontId]: "yes", [backId]: "yes" } as const;
  return {
    "0": { productUse: productUseKey(feedId, "Established lawns"), rate: "2.5 lb/1,000 sq ft", reason: "feed", lawns },
    "1": { productUse: productUseKey(ironId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "color", lawns },
  };
}

/** The task of a preventer on both lawns. */
export function preventer({ preventerId }: CrewDay, { frontId, backId }: Ground, rate = "3 lb/1,000 sq ft") {
  return { "0": { productUse: productUseKey(preventerId, "Crabgrass, spring"), rate, reason: "crabgrass", lawns: { [frontId]: "yes", [backId]: "yes" } as const } };
}

/** A property in Indiana with a visit of feed and iron on the day, and a second look three days later. */
export async function aFedVisit(house: TestHouse, company: TestCompany, day: CrewDay) {
  const ground = await aGround(house, company);
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, feedAndIron(day, ground), "3");
  return { ...ground, visitId };
}

type CompleteForm = Parameters<typeof completeVisit>[2];

/** What was done at a visit of feed and iron, 8:00 to 8:45 on the day: as planned where nothing else is said. */
export function completeForm(house: TestHouse, applicatorId: string, on: Ground & { readonly visitId: string }, change: Partial<CompleteForm> = {}): CompleteForm {
  const asPlanned = { measuredBy: "as-planned-not-measured" } as const;
  return {
    requestId: house.newId(), visitId: on.visitId, doneOn: CREW_DAY, startedAt: "8:00", endedAt: "8:45", applicatorId,
    temperatureF: "61", windMph: "4", windFrom: "SW", instrument: "Hand-held meter", lawns: { [on.frontId]: "done", [on.backId]: "done" },
    mixes: { "1": asPlanned, "2": asPlanned }, signIsUp: "yes", noticeWasLeft: "yes", remarks: "", signature: "A. Owner", ...change,
  };
}

/** Writes the record of a visit, as a member of the crew. */
export async function aRecord(house: TestHouse, member: TestMember, on: Ground & { readonly visitId: string }, change: Partial<CompleteForm> = {}) {
  return valueOf(await completeVisit(house, member.key, completeForm(house, member.personId, on, change)));
}

type FillForm = Parameters<typeof recordFill>[2];

/** What a test says otherwise of a fill; the volume alone is what the gauge showed after filling an empty tank. */
type FillChange = Partial<FillForm> & { readonly finished?: string };

/** Forty gallons with 30 fl oz of iron in them, mixed in an empty tank at the truck at 7:15. */
export function fillForm(house: TestHouse, day: CrewDay, visitIds: readonly string[], { finished = "40 gal", ...change }: FillChange = {}): FillForm {
  return {
    requestId: house.newId(), equipmentId: day.sprayerId, filledOn: CREW_DAY, filledAt: "7:15", mixingPlace: "Shop yard", gaugeBefore: "0 gal", gaugeAfter: finished,
    products: { [day.ironId]: "30 fl oz" }, from: `vehicle:${day.vehicleId}`, visitIds: [...visitIds], ...change,
  };
}

/** A fill of the sprayer on the books, as its form has it where nothing else is said. */
export async function aFill(house: TestHouse, company: TestCompany, day: CrewDay, visitIds: readonly string[] = [], change: FillChange = {}) {
  return valueOf(await recordFill(house, company.owner.key, fillForm(house, day, visitIds, change)));
}

type CleanOutForm = Parameters<typeof recordCleanOut>[2];

/** The sprayer cleaned out at 7:30, its rinsate in the shop's tank. */
export function cleanOutForm(house: TestHouse, day: CrewDay, doneById: string, change: Partial<CleanOutForm> = {}): CleanOutForm {
  return {
    requestId: house.newId(), equipmentId: day.sprayerId, cleanedOn: CREW_DAY, cleanedAt: "7:30", doneById, how: "Three times with ten gallons of water",
    rinsateWent: "shop-tank", rinsateVisitId: "", rinsateWhere: "", ...change,
  };
}

/** A clean-out of the sprayer on the books, done by the owner, as its form has it where nothing else is said. */
export async function aCleanOut(house: TestHouse, company: TestCompany, day: CrewDay, change: Partial<CleanOutForm> = {}) {
  return valueOf(await recordCleanOut(house, company.owner.key, cleanOutForm(house, day, company.owner.personId, change)));
}

type LookForm = Parameters<typeof lookAtLawns>[2];

/** Both lawns of a visit looked at, at 7:15: clover in bloom on the front one, nothing on the back one. */
export function lookForm(house: TestHouse, { visitId, frontId, backId }: Ground & { readonly visitId: string }, seenById: string, change: Partial<LookForm> = {}): LookForm {
  return {
    requestId: house.newId(), visitId, seenOn: CREW_DAY, seenAt: "7:15", seenById,
    lawns: { [frontId]: "yes", [backId]: "no" }, said: { [frontId]: "Clover along the walk", [backId]: "" }, ...change,
  };
}

type TankReadingForm = Parameters<typeof recordTankReading>[2];

/** The tank dipped at 7:30 with nothing in it; nobody says where anything went. */
export function tankReadingForm(house: TestHouse, day: Pick<CrewDay, "sprayerId">, readById: string, change: Partial<TankReadingForm> = {}): TankReadingForm {
  return { requestId: house.newId(), equipmentId: day.sprayerId, readOn: CREW_DAY, readAt: "7:30", readById, how: "Dipstick", volume: "0", missingWent: "", note: "", ...change };
}

/** Three visits of feed and iron that share one fill. */
export async function aSharedFill(house: TestHouse, company: TestCompany, day: CrewDay) {
  const visits = [await aFedVisit(house, company, day), await aFedVisit(house, company, day), await aFedVisit(house, company, day)];
  const fill = await aFill(house, company, day, visits.map(({ visitId }) => visitId));
  return { visits, ...fill };
}

/** A visit in Illinois under a hold of law that a license holder may answer: phosphorus without a soil test. */
export async function aVisitUnderHold(house: TestHouse, company: TestCompany, day: CrewDay) {
  const ground = await aGround(house, company, "IL");
  const tasks = { "0": { productUse: productUseKey(day.starterId, "Established lawns"), rate: "2.5 lb/1,000 sq ft", reason: "feed", lawns: { [ground.frontId]: "yes" } } };
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, tasks);
  const rule = "phosphorus-without-need";
  const [hold = ""] = await holdsToAnswer(house, company, visitId, rule);
  return { ...ground, visitId, rule, hold };
}

/** The open holds of a visit by a rule, as their answers are given to them. */
export async function holdsToAnswer(house: TestHouse, company: TestCompany, visitId: string, rule: string): Promise<readonly string[]> {
  const { openHolds, outcome } = valueOf(await readVisit(house, company.owner.key, { visitId }));
  if (!outcome.ok) throw new Error("No mix ticket can be worked out.");
  const { on } = outcome.value.application;
  return openHolds.filter((hold) => hold.rule === rule).map((hold) => textOfAnsweredHold(answeredHold(hold, on)));
}
