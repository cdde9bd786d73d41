import { beforeAll, describe, expect, test } from "vitest";
import { addProgram } from "#application/programs/add-program";
import { addRound } from "#application/programs/add-round";
import { putOnProgram } from "#application/programs/put-on-program";
import { readProgram } from "#application/programs/read-program";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { readNutrientLedger } from "#application/properties/read-nutrient-ledger";
import { readRecord } from "#application/register/read-record";
import { issueMixTicket } from "#application/visits/issue-mix-ticket";
import { planVisit } from "#application/visits/plan-visit";
import { readVisit } from "#application/visits/read-visit";
import { type LabelText } from "#domain/label/label-fields";
import { of } from "#domain/quantities/quantity";
import { addRates, rateFrom, rateOf } from "#domain/quantities/rate";
import { valueOf } from "../../support/crew";
import { aFill, aGround, aJug, aRecord, aVisitWith, type Ground } from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { A_SENTENCE } from "../../support/said";
import { aConfirmedLabel, aLiquid, balancesOf } from "../../support/shed";

allOnACrewDay();

let killerId: string;
beforeAll(async () => {
  killerId = await aLiquid(house, company);
  await aConfirmedLabel(house, company, killerId, KILLER);
  await aJug(house, company, day, killerId, "SK-1");
});

const [IRON_USE] = A_WHOLE_IRON_TEXT.uses;
if (IRON_USE === undefined) throw new Error("the iron has a use");
/** A spot weed killer by the gallon, with 4 lb of its ingredient in each of its own gallons. */
const KILLER: LabelText = {
  ...A_WHOLE_IRON_TEXT,
  general: { ...A_WHOLE_IRON_TEXT.general, grade: "none", nitrogenRelease: "none", epaRegistrationNumber: "DEMO-0000-71", activeIngredients: "Oxathrin; 4 lb per gal; Group 4 herbicide" },
  uses: [{ ...IRON_USE, useName: "Spots", serviceType: "broadleaf weed control", targets: "dandelion", carrier: "none", stainsHardSurfaces: "no", rates: "1 to 1.5 fl oz per gal; spray to wet; spots no more than 30 % of the lawn" }],
};

const spots = (ground: Ground, change: object = {}) => ({
  "0": { productUse: productUseKey(killerId, "Spots"), rate: "1.5 fl oz/gal", spotShare: "25%", reason: "dandelion", lawns: { [ground.frontId]: "yes" as const, [ground.backId]: "yes" as const }, ...change },
});

async function aSpotVisit(change: object = {}) {
  const ground = await aGround(house, company);
  return { ...ground, visitId: await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, spots(ground, change)) };
}

const asPlanned = { measuredBy: "as-planned-not-measured" } as const;
// 25 % of 2,400 and of 4,000 sq ft.
const [FRONT_SPOTS, BACK_SPOTS] = [of("sq ft", 600n), of("sq ft", 1000n)];

describe("a rate by the gallon", () => {
  test("makes a mix ticket for the spots, never above the highest strength, that is issued and stays", async () => {
    const { visitId } = await aSpotVisit();
    const { outcome } = valueOf(await readVisit(house, company.owner.key, { visitId }));
    if (!outcome.ok) throw new Error(outcome.refusal.refusal.sentence);
    const [mix] = outcome.value.ticket.mixes;
    if (mix?.kind !== "spray") throw new Error("it is sprayed");
    expect(mix.lawns.map(({ treatedArea, spot }) => [treatedArea, spot?.shareBasisPoints])).toEqual([[FRONT_SPOTS, 2500], [BACK_SPOTS, 2500]]);
    // 1,600 sq ft at 2 gal per 1,000 take 3.2 gal, and those 4.8 fl oz: the cup's next mark would be too strong.
    expect(mix.finished).toEqual(of("gal", "3.2"));
    expect(mix.products).toMatchObject([{ total: of("fl oz", "4.5"), concentration: rateOf("product-volume-per-spray-volume", "1.5", "fl oz per gal") }]);
    expect(outcome.value.findings.map(({ rule }) => rule)).toContain("spray-to-wet");
    const first = valueOf(await issueMixTicket(house, company.owner.key, { visitId }));
    expect(valueOf(await issueMixTicket(house, company.owner.key, { visitId }))).toEqual(first);
  });

  test("is recorded with its share: active ingredient on the spots, stock from the truck", async () => {
    const visit = await aSpotVisit();
    const before = await balancesOf(house, killerId);
    const { registerEntryId } = await aRecord(house, company.owner, visit, { startedAt: "5:00", endedAt: "5:30", mixes: { "1": { measuredBy: "meter", amount: "3.2 gal" } } });
    const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
    const [killer] = content.treatments;
    expect(killer).toMatchObject({ plannedRate: "1.5 fl oz/gal", spotShareBasisPoints: 2500, total: { words: "4\u00BD fl oz" }, lots: [{ number: "SK-1" }] });
    // 4.5 fl oz of 4 lb per gal on 1,600 sq ft of spots.
    const oxathrin = rateFrom("active-ingredient-mass-per-area", of("lb", { numerator: 18n, denominator: 128n }), of("sq ft", 1600n));
    const counted = killer?.lawns.flatMap(({ activeIngredients }) => activeIngredients.map(({ amount, per }) => Number(amount) / Number(per))) ?? [];
    expect(counted).toHaveLength(2);
    // Shares of an amount are whole canonical units.
    for (const one of counted) expect(one / (Number(oxathrin.amount) / Number(oxathrin.per))).toBeCloseTo(1, 9);
    expect(content.findings.filter(({ rule }) => rule === "put-down-above-label")).toEqual([]);
    const after = await balancesOf(house, killerId);
    expect(BigInt(after["lawn"] ?? "0") - BigInt(before["lawn"] ?? "0")).toBe(of("fl oz", "4.5").amount);
  });

  test("out of a fill that was mixed too strong the record says so", async () => {
    const visit = await aSpotVisit();
    const { fillId } = await aFill(house, company, day, [visit.visitId], { finished: "4 gal", products: { [killerId]: "8 fl oz" } });
    const { registerEntryId } = await aRecord(house, company.owner, visit, { startedAt: "4:00", endedAt: "4:30", mixes: { "1": { measuredBy: "meter", amount: "3.2 gal", fillId } } });
    const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
    expect(content.findings.find(({ rule }) => rule === "put-down-above-label")?.figure).toBe("It came to 2 fl oz per gal; the label's highest is 1\u00BD fl oz per gal.");
  });

  test("needs a share that is typed, and holds above the label's most of a lawn", async () => {
    const ground = await aGround(house, company);
    const form = { requestId: house.newId(), propertyId: ground.propertyId, name: "Spots", opensOn: "2026-04-14", closesOn: "2026-04-24", customerFrom: "", customerUntil: "", secondLook: "" };
    expect(await planVisit(house, company.owner.key, { ...form, tasks: spots(ground, { spotShare: "" }) })).toMatchObject({ refusal: { fields: { "tasks.0.spotShare": A_SENTENCE } } });
    expect(await planVisit(house, company.owner.key, { ...form, tasks: spots(ground, { rate: "1.6 fl oz/gal" }) })).toMatchObject({ refusal: { fields: { "tasks.0.rate": expect.stringContaining("highest") as string } } });
    const { visitId } = await aSpotVisit({ spotShare: "31 %" });
    const { outcome } = valueOf(await readVisit(house, company.owner.key, { visitId }));
    expect(outcome.ok && outcome.value.findings.filter(({ level }) => level === "hold").map(({ rule }) => rule)).toEqual(["spot-share-above-label"]);
  });

  test("put down with a spreader is a hold that names both, and the record asks for the amount", async () => {
    const visit = await aSpotVisit();
    await house.ask("update visit_task set equipment_id = $2 where visit_id = $1", [visit.visitId, day.spreaderId]);
    const { outcome } = valueOf(await readVisit(house, company.owner.key, { visitId: visit.visitId }));
    expect(!outcome.ok && outcome.refusal.findings.map(({ rule }) => rule)).toContain("rate-for-a-sprayer");
    expect(await aRecord(house, company.owner, visit, { startedAt: "3:00", endedAt: "3:30", mixes: { "1": { measuredBy: "meter", amount: "4 fl oz" } } })).toHaveProperty("number");
  });
});

describe("a rate over area", () => {
  test("on spots: a share of the amount; limits count the spots, the year's ledger the whole lawn", async () => {
    const ground = await aGround(house, company);
    const tasks = { "0": { productUse: productUseKey(day.feedId, "Established lawns"), rate: "2.5 lb/1,000 sq ft", spotShare: "10%", reason: "thin spots", lawns: { [ground.backId]: "yes" } } };
    const visit = { ...ground, visitId: await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, tasks) };
    const partsOf = async () => {
      const { lawns } = valueOf(await readNutrientLedger(house, company.owner.key, { propertyId: ground.propertyId, visitId: visit.visitId }));
      const nitrogen = lawns.find(({ zoneId }) => zoneId === ground.backId)?.ledger.nutrients.find(({ nutrient }) => nutrient === "nitrogen");
      return nitrogen?.parts.map(({ standing, amount: { quick, slow, notStated } }) => [standing, addRates(addRates(quick, slow), notStated)]);
    };
    // 2.5 lb of 32 % on a tenth of the lawn.
    const brought = rateOf("nutrient-mass-per-area", "0.08", "lb per 1,000 sq ft");
    expect(await partsOf()).toEqual([["this-visit", brought]]);
    const { registerEntryId } = await aRecord(house, company.owner, visit, { startedAt: "2:00", endedAt: "2:30", lawns: { [ground.backId]: "done" }, mixes: { "1": asPlanned } });
    const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
    expect(content.treatments).toMatchObject([{ spotShareBasisPoints: 1000, total: { words: "1 lb" }, lawns: [{ treatedArea: { words: "400 sq ft" } }] }]);
    expect(await partsOf()).toEqual([["put-down", brought]]);
  });

  test("in a round goes into its visits, and counts in the season over the whole lawn", async () => {
    const ground = await aGround(house, company);
    const { programId } = valueOf(await addProgram(house, company.owner.key, { name: "Spots", season: "2026" }));
    const treatments = { "0": { productUse: productUseKey(day.feedId, "Established lawns"), rate: "2.5 lb/1,000 sq ft", spotShare: "10%", reason: "thin spots" } };
    valueOf(await addRound(house, company.owner.key, { programId, name: "Spring", opensOn: "2026-04-20", closesOn: "2026-05-05", secondLook: "", treatments }));
    valueOf(await putOnProgram(house, company.owner.key, { programId, properties: { [ground.propertyId]: "yes" } }));
    expect(await house.ask("select t.spot_share_basis_points as share from visit_task t join visit v using (company_id, visit_id) where v.property_id = $1", [ground.propertyId])).toEqual([{ share: 1000 }]);
    const { program } = valueOf(await readProgram(house, company.owner.key, { programId }));
    expect(program.rounds[0]?.treatments[0]).toMatchObject({ spotShareBasisPoints: 1000, nitrogen: { value: { nitrogen: rateOf("nutrient-mass-per-area", "0.08", "lb per 1,000 sq ft") } } });
  });
});
