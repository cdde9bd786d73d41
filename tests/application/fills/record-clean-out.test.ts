import { afterAll, beforeAll, expect, test } from "vitest";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { recordFill } from "#application/fills/record-fill";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aCrewDay, aFedVisit, cleanOutForm, type CrewDay, fillForm } from "../../support/crew-day";
import { openHouse, type TestHouse } from "../../support/house";

let house: TestHouse;
let company: TestCompany;
let day: CrewDay;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  day = await aCrewDay(house, company);
});
afterAll(() => house.close());

type Change = Parameters<typeof cleanOutForm>[3];
const form = (change: Change = {}) => cleanOutForm(house, day, company.owner.personId, change);
const record = (change: Change = {}) => recordCleanOut(house, company.owner.key, form(change));
const rows = () => house.ask<{ clean_out_id: string; rinsate_went: string; rinsate_where: string | null }>("select * from clean_out where company_id = $1 order by entered_at", [company.companyId]);

test("a clean-out is one row with one deed; pressed twice, and twice at once, it stays one", async () => {
  const pressed = form();
  const { cleanOutId } = valueOf(await recordCleanOut(house, company.owner.key, pressed));
  expect(valueOf(await recordCleanOut(house, company.owner.key, pressed))).toEqual({ cleanOutId });
  expect(await rows()).toMatchObject([{ clean_out_id: cleanOutId, equipment_id: day.sprayerId, done_by_id: company.owner.personId, cleaned_at: new Date("2026-04-14T11:30:00Z") }]);
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "clean-out-recorded", subject_id: cleanOutId });
  const atOnce = form();
  const both = await Promise.all([recordCleanOut(house, company.owner.key, atOnce), recordCleanOut(house, company.owner.key, atOnce)]);
  expect(new Set(both.map((answer) => valueOf(answer).cleanOutId)).size).toBe(1);
  expect(await rows()).toHaveLength(2);
});

test("the same form with other words in it writes nothing and says so", async () => {
  const pressed = form();
  valueOf(await recordCleanOut(house, company.owner.key, pressed));
  const before = await rows();
  expect(await recordCleanOut(house, company.owner.key, { ...pressed, how: "Once" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await recordCleanOut(house, company.owner.key, { ...pressed, cleanedAt: "7:31" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await rows()).toEqual(before);
});

test("one from before the last fill is a fact all the same", async () => {
  valueOf(await recordFill(house, company.owner.key, fillForm(house, day, [], { filledAt: "7:45" })));
  const before = (await rows()).length;
  valueOf(await record({ cleanedAt: "7:44" }));
  expect(await rows()).toHaveLength(before + 1);
});

test("each way of the rinsate is taken, and one that says too much or too little is refused at its field", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  const taken: readonly Change[] = [{ rinsateWent: "labeled-site", rinsateVisitId: visitId }, { rinsateWent: "labeled-site", rinsateWhere: "The shop's own lawn" }, { rinsateWent: "elsewhere", rinsateWhere: "A hauler's drum" }];
  for (const change of taken) valueOf(await record(change));
  const refused: readonly (readonly [Change, string])[] = [
    [{ rinsateWent: "labeled-site" }, "rinsateVisitId"],
    [{ rinsateWent: "labeled-site", rinsateVisitId: visitId, rinsateWhere: "And there" }, "rinsateWhere"],
    [{ rinsateWent: "labeled-site", rinsateVisitId: house.newId() }, "rinsateVisitId"],
    [{ rinsateWent: "shop-tank", rinsateVisitId: visitId }, "rinsateVisitId"],
    [{ rinsateWent: "shop-tank", rinsateWhere: "There" }, "rinsateWhere"],
    [{ rinsateWent: "elsewhere" }, "rinsateWhere"],
    [{ rinsateWent: "elsewhere", rinsateWhere: "There", rinsateVisitId: visitId }, "rinsateVisitId"],
  ];
  for (const [change, field] of refused) expect(await fieldsOf(change)).toEqual([field]);
});

test("is refused for what is no clean-out: another company's sprayer, a spreader, the future, nobody, no words", async () => {
  const other = await aCompany(house);
  const otherDay = await aCrewDay(house, other);
  const before = await rows();
  expect(await record({ equipmentId: otherDay.sprayerId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  expect(await fieldsOf({ equipmentId: day.spreaderId })).toEqual(["equipmentId"]);
  expect(await fieldsOf({ cleanedAt: "9:01" })).toEqual(["cleanedAt"]);
  expect(await fieldsOf({ cleanedOn: "2026-04-15" })).toEqual(["cleanedAt"]);
  expect(await fieldsOf({ doneById: other.owner.personId })).toEqual(["doneById"]);
  expect(await fieldsOf({ how: " " })).toEqual(["how"]);
  expect(await rows()).toEqual(before);
});

test("what is written can't be changed or taken out, by the owner of the tables either", async () => {
  for (const sql of ["update clean_out set how = 'Not at all'", "delete from clean_out", "truncate clean_out"]) await expect(house.ask(sql)).rejects.toThrow("append-only");
});

async function fieldsOf(change: Change) {
  const answer = await record(change);
  return !answer.ok && answer.refusal.kind === "bad-input" ? Object.keys(answer.refusal.fields) : answer;
}
