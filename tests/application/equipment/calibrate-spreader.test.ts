import { afterAll, beforeAll, expect, test } from "vitest";
import { addEquipment } from "#application/equipment/add-equipment";
import { calibrateSpreader } from "#application/equipment/calibrate-spreader";
import { readCalibration } from "#application/equipment/read-calibration";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany, trailOf, valueOf } from "../../support/crew";
import { aProduct, aSpreader, aSprayer, spreaderCalibrationForm, spreaderForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { A_SENTENCE, saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
let equipmentId: string;
let productId: string;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
  equipmentId = await aSpreader(house, company);
  productId = await aProduct(house, company);
});
afterAll(() => house.close());

const calibrate = (input: object) =>
  calibrateSpreader(house, company.owner.key, { ...spreaderCalibrationForm(equipmentId, company.owner.personId, productId), ...input });

test("writes what was typed and the rate that follows, for one product at one setting", async () => {
  const { calibrationId } = valueOf(await calibrate({}));
  const [row] = await house.ask(
    "select product_id, setting, tip, pressure_psi, method, inputs, rate_basis, rate_amount, rate_per from calibration where calibration_id = $1",
    [calibrationId],
  );
  expect(row).toEqual({
    product_id: productId,
    setting: "M",
    tip: null,
    pressure_psi: null,
    method: "collected-over-area",
    inputs: { area: "1,000 sq ft", collected: "2.9 lb\n3.1 lb" },
    rate_basis: "product-mass-per-area",
    rate_amount: String(of("lb", 3n).amount),
    rate_per: String(of("sq ft", 1000n).amount),
  });
  expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({
    deed: "spreader-calibrated",
    details: { setting: "M", rate: "3 lb per 1,000 sq ft", madeOn: "2026-04-14" },
  });
});

test("the swath and the pace are kept as typed, and told on its page", async () => {
  const { calibrationId } = valueOf(await calibrate({ swath: "10 ft", speedMph: "3" }));
  const [row] = await house.ask<{ inputs: object }>("select inputs from calibration where calibration_id = $1", [calibrationId]);
  expect(row?.inputs).toEqual({ area: "1,000 sq ft", collected: "2.9 lb\n3.1 lb", swath: "10 ft", speedMph: "3" });
  const read = valueOf(await readCalibration(house, company.owner.key, { calibrationId }));
  expect(read.working?.measured).toEqual(["Over 1,000 sq ft it gave 2.9 lb and 3.1 lb.", "The swath is 10 ft.", "The speed is 3 mph."]);
});

test("a speed needs a swath: the one typed, or the one on file", async () => {
  const bare = valueOf(await addEquipment(house, company.owner.key, { ...spreaderForm(), swath: "" })).equipmentId;
  expect(await calibrate({ equipmentId: bare, speedMph: "3" })).toMatchObject({ refusal: { fields: { swath: saying("swath") } } });
  expect(await calibrate({ equipmentId: bare, speedMph: "3", swath: "10 ft" })).toMatchObject({ ok: true });
  expect(await calibrate({ equipmentId: bare, minutesPerThousand: "1.5" })).toMatchObject({ ok: true });
  expect(await calibrate({ speedMph: "3" })).toMatchObject({ ok: true });
});

test("each refusal stands at the field that it is about, and writes nothing", async () => {
  const liquid = await aProduct(house, company, "liquid");
  const retired = await aProduct(house, company);
  await house.ask("update product set retired_at = now() where product_id = $1", [retired]);
  const before = await house.books();
  const cases: readonly (readonly [string, object])[] = [
    ["productId", { productId: liquid }],
    ["productId", { productId: retired }],
    ["setting", { setting: "" }],
    ["area", { area: "0 sq ft" }],
    ["collected", { collected: "3 gal" }],
    ["minutesPerThousand", { speedMph: "3", minutesPerThousand: "1" }],
    ["speedMph", { speedMph: "300" }],
    ["swath", { swath: "10" }],
    ["collected", { collected: "3000 lb" }],
  ];
  for (const [field, change] of cases) {
    expect(await calibrate(change), field).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { [field]: A_SENTENCE } } });
  }
  expect(await house.books()).toEqual(before);
});

test("a sprayer is no spreader", async () => {
  expect(await calibrate({ equipmentId: await aSprayer(house, company) })).toMatchObject({ refusal: { kind: "conflict", sentence: saying("sprayer") } });
});
