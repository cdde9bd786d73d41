import { afterAll, beforeAll, expect, test } from "vitest";
import { calibrateSprayer } from "#application/equipment/calibrate-sprayer";
import { standDownEquipment } from "#application/equipment/stand-down-equipment";
import { changePerson } from "#application/people/change-person";
import { aCompany, aMember, aPerson, type TestCompany, type TestMember, valueOf } from "../../support/crew";
import { aSprayer, sprayerCalibrationForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let equipmentId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  equipmentId = await aSprayer(house, company);
});
afterAll(() => house.close());

const calibrate = (member: TestMember, operatorId: string, input: object = {}) =>
  calibrateSprayer(house, member.key, { ...sprayerCalibrationForm(equipmentId, operatorId), ...input });

test("the office enters it for whom it may, applicators and technicians for themselves", async () => {
  const office = await aMember(house, company, "office");
  for (const role of ["applicator", "technician"] as const) {
    const member = await aMember(house, company, role);
    valueOf(await calibrate(office, member.personId));
    valueOf(await calibrate(member, member.personId));
    expect(await calibrate(member, office.personId)).toMatchObject({ refusal: { kind: "bad-input", fields: { operatorId: saying("yourself") } } });
  }
});

test("somebody without an account may be the operator; somebody who had left by then may not", async () => {
  const personId = await aPerson(house, company, "Wes");
  valueOf(await calibrate(company.owner, personId));
  valueOf(await changePerson(house, company.owner.key, { personId, version: 1, name: "Wes", phone: "", leftOn: "2026-04-10" }));
  valueOf(await calibrate(company.owner, personId, { madeOn: "2026-04-10" }));
  expect(await calibrate(company.owner, personId, { madeOn: "2026-04-11" })).toMatchObject({ refusal: { fields: { operatorId: saying("left") } } });
});

test("today is the company's day, and no later one is taken", async () => {
  expect(await calibrate(company.owner, company.owner.personId, { madeOn: "2026-04-15" })).toMatchObject({ refusal: { fields: { madeOn: saying("still to come") } } });
  house.pass(14 * 60 + 59);
  expect(await calibrate(company.owner, company.owner.personId, { madeOn: "2026-04-15" })).toMatchObject({ ok: false });
  house.pass(1);
  valueOf(await calibrate(company.owner, company.owner.personId, { madeOn: "2026-04-15" }));
});

test("gear that is stood down is calibrated no more", async () => {
  const stood = await aSprayer(house, company);
  valueOf(await standDownEquipment(house, company.owner.key, { equipmentId: stood }));
  expect(await calibrate(company.owner, company.owner.personId, { equipmentId: stood })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("stood down") } });
});
