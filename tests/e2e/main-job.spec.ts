import { test } from "./office";
import { beginCompany, OWNER } from "./main-job/begin";
import { importCustomers } from "./main-job/customers";
import { fitOut } from "./main-job/gear";
import { measureGround } from "./main-job/ground";
import { fillShed } from "./main-job/shed";

// The test is as long as the job. A control that is missing ends it sooner than its own limit would.
test.use({ actionTimeout: 20_000 });

test("the whole job of a season's day, from an empty company to the printed record", async ({ page, emptyOffice }) => {
  test.setTimeout(900_000);
  await test.step("the company is created and its owner signs in", () => beginCompany(page, emptyOffice));
  await test.step("a customer list is brought and mended", () => importCustomers(page));
  await test.step("a property at a pond is measured", () => measureGround(page));
  await test.step("three labels are typed and confirmed, stock comes in lots", () => fillShed(page, OWNER.name));
  await test.step("truck, sprayer, spreader and tools, calibrated by name", () => fitOut(page, OWNER.name));
});
