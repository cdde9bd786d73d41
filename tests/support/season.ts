// Builders: programs, rounds and visits as the use cases themselves make them.
import { addProgram } from "#application/programs/add-program";
import { addRound } from "#application/programs/add-round";
import { putOnProgram } from "#application/programs/put-on-program";
import { planVisit } from "#application/visits/plan-visit";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { type TestCompany, valueOf } from "./crew";
import { aZone } from "./ground";
import { type TestHouse } from "./house";
import { aFeedText } from "./label-texts";
import { aConfirmedLabel, aFeed } from "./shed";

let made = 0;

/** The form of a program, filled in; each name is used once. */
export function programForm() {
  return { name: `Feeding ${String((made += 1))}`, season: "2026" };
}

/** A program without rounds. */
export async function aProgram(house: TestHouse, company: TestCompany): Promise<string> {
  return valueOf(await addProgram(house, company.owner.key, programForm())).programId;
}

/** A feed with a confirmed label: 32-0-0, and 2 to 3 lb per 1,000 sq ft on established lawns. */
export async function aLabeledFeed(house: TestHouse, company: TestCompany): Promise<string> {
  const productId = await aFeed(house, company);
  await aConfirmedLabel(house, company, productId, aFeedText({ grade: "32-0-0", nitrogenRelease: "none" }));
  return productId;
}

/** The row of a treatment with a feed. */
export function treatmentRow(productId: string, rate = "2.5 lb/1,000 sq ft") {
  return { productUse: productUseKey(productId, "Established lawns"), rate, reason: "feed" };
}

/** The form of a round that is open on the day on which a test house opens. */
export function roundForm(programId: string, productId: string, rate?: string) {
  return {
    programId, name: "Spring feed", opensOn: "2026-04-06", closesOn: "2026-04-24", secondLook: "", treatments: { "0": treatmentRow(productId, rate), "1": { productUse: "", rate: "", reason: "" } },
  };
}

/** A program with one round of one feed. */
export async function aRound(house: TestHouse, company: TestCompany) {
  const [programId, productId] = [await aProgram(house, company), await aLabeledFeed(house, company)];
  const { roundId } = valueOf(await addRound(house, company.owner.key, roundForm(programId, productId)));
  return { programId, productId, roundId };
}

/** A program with one round, and a property with one lawn of 2,400 sq ft on it. */
export async function anEnrollment(house: TestHouse, company: TestCompany) {
  const round = await aRound(house, company);
  const { zoneId, propertyId } = await aZone(house, company);
  valueOf(await putOnProgram(house, company.owner.key, { programId: round.programId, properties: { [propertyId]: "yes" } }));
  const [visit] = await house.ask<{ visit_id: string }>("select visit_id from visit where round_id = $1", [round.roundId]);
  if (visit === undefined) throw new Error("no visit was made");
  return { ...round, zoneId, propertyId, visitId: visit.visit_id };
}

/** The form of a visit planned by hand: one feed on one lawn. */
export function visitForm(house: TestHouse, on: { readonly propertyId: string; readonly zoneId: string; readonly productId: string }) {
  return {
    requestId: house.newId(), propertyId: on.propertyId, name: "Call-back", opensOn: "2026-04-14", closesOn: "2026-04-20", customerFrom: "", customerUntil: "", secondLook: "",
    tasks: { "0": { ...treatmentRow(on.productId), lawns: { [on.zoneId]: "yes" as const } } },
  };
}

/** A visit planned by hand at a property of its own. */
export async function aPlannedVisit(house: TestHouse, company: TestCompany) {
  const productId = await aLabeledFeed(house, company);
  const on = { ...(await aZone(house, company)), productId };
  return { ...on, ...valueOf(await planVisit(house, company.owner.key, visitForm(house, on))) };
}

/** Puts a visit on a truck's day. */
export async function putOnDay(house: TestHouse, company: TestCompany, visitId: string, date: string): Promise<void> {
  const [vehicleId, routeDayId] = [house.newId(), house.newId()];
  await house.ask("insert into vehicle (company_id, vehicle_id, number, name, created_at) values ($1, $2, $3, 'Truck', $4)", [company.companyId, vehicleId, 500 + (made += 1), house.now()]);
  await house.ask(
    `insert into route_day (company_id, route_day_id, date, vehicle_id, operator_id, starts_at_minute, ends_at_minute, created_at) values ($1, $2, $3, $4, $5, 420, 1020, $6)`,
    [company.companyId, routeDayId, date, vehicleId, company.owner.personId, house.now()],
  );
  await house.ask("insert into stop (company_id, visit_id, route_day_id, position) values ($1, $2, $3, 1)", [company.companyId, visitId, routeDayId]);
}
