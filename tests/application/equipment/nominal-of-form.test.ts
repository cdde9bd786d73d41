import { afterAll, beforeAll, expect, test } from "vitest";
import { NO_NOMINAL_FIGURES, nominalOfForm, storedNominal } from "#application/equipment/nominal-of-form";
import { of } from "#domain/quantities/quantity";
import { aCompany, type TestCompany } from "../../support/crew";
import { inWorkOf } from "../../support/crew-day";
import { aProduct, GUN_NOMINAL, spreaderForm, sprayerForm } from "../../support/gear";
import { openHouse, type TestHouse } from "../../support/house";
import { saying } from "../../support/said";

let house: TestHouse;
let company: TestCompany;
beforeAll(async () => {
  house = await openHouse();
  company = await aCompany(house);
});
afterAll(() => house.close());

const SWATH = of("ft", 8n).amount;
const asked = (form: Parameters<typeof nominalOfForm>[1], swath: bigint | null = SWATH) => inWorkOf(house, company, (work) => nominalOfForm(work, form, swath));
const sprayer = (more: object) => ({ ...sprayerForm(), vehicleId: null, ...GUN_NOMINAL, ...more });

test("figures are kept as they were typed, half of them too", async () => {
  expect(await asked(sprayer({}))).toEqual({ ok: true, value: { ...GUN_NOMINAL, tipDroplets: "" } });
  expect(await asked(sprayer({ pressurePsi: "" }))).toMatchObject({ ok: true, value: { pressurePsi: "", tipFlow: "1.5 gal" } });
});

test("figures that no sprayer has are refused at their field, with the swath of the gear", async () => {
  expect(await asked(sprayer({ tipFlow: "900 gal" }))).toMatchObject({ refusal: { fields: { minutesPerThousand: saying("no such equipment") } } });
  expect(await asked(sprayer({ speedMph: "3" }))).toMatchObject({ refusal: { fields: { minutesPerThousand: saying("not both") } } });
  expect(await asked(sprayer({ minutesPerThousand: "", speedMph: "3" }), of("in", "0.1").amount)).toMatchObject({ refusal: { fields: { speedMph: saying("no such equipment") } } });
});

test("a bag's setting is for a granular product on file, whatever the case of its letters", async () => {
  const liquid = await aProduct(house, company, "liquid");
  const granular = await aProduct(house, company);
  const nameOf = async (id: string) => (await house.ask<{ name: string }>("select name from product where product_id = $1", [id]))[0]?.name ?? "";
  const form = (product: string) => ({ ...spreaderForm(), vehicleId: null, bagSettings: `${product}; M; 3 lb per 1,000 sq ft` });
  const typed = form((await nameOf(granular)).toUpperCase());
  expect(await asked(typed)).toEqual({ ok: true, value: { bagSettings: typed.bagSettings } });
  expect(await asked(form(await nameOf(liquid)))).toMatchObject({ refusal: { fields: { bagSettings: saying("No granular product") } } });
});

test("what a row has not is empty", () => {
  expect(storedNominal(null)).toEqual(NO_NOMINAL_FIGURES);
  expect(storedNominal({ bagSettings: "x" })).toEqual({ ...NO_NOMINAL_FIGURES, bagSettings: "x" });
});
