import { expect, test } from "vitest";
import { enterLabel } from "#application/products/enter-label";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { linesOf, recordPlan } from "#application/register/record-plan";
import { unplannedInFills } from "#application/register/unplanned-in-fills";
import { visitOnFile } from "#application/visits/read-visit";
import { valueOf } from "../../support/crew";
import { aFedVisit, aFill, aJug, inWorkOf } from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";
import { aLiquid, labelForm } from "../../support/shed";

allOnACrewDay();

/** A liquid on the truck, with these uses on its label; without a label where there are none. */
async function aLiquidWith(...useNames: readonly string[]): Promise<string> {
  const productId = await aLiquid(house, company);
  const [use] = A_WHOLE_IRON_TEXT.uses;
  if (use === undefined) throw new Error("the iron has a use");
  for (const [useIndex, useName] of useNames.entries()) {
    const form = { ...labelForm(productId, { ...A_WHOLE_IRON_TEXT, uses: [{ ...use, useName }] }), basedOnNumber: useIndex, useIndex };
    valueOf(await enterLabel(house, company.owner.key, form));
  }
  await aJug(house, company, day, productId);
  return productId;
}

/** What a fill of iron and more holds beyond the plan of iron. */
async function besideIron(...more: readonly string[]) {
  const visit = await aFedVisit(house, company, day);
  const products = Object.fromEntries([day.ironId, ...more].map((productId) => [productId, "30 fl oz"]));
  const { fillId } = await aFill(house, company, day, [visit.visitId], { products });
  return inWorkOf(house, company, async (work) => {
    const found = await visitOnFile(work, visit.visitId);
    const fill = (await fillsAtHand(work, [fillId], house.now())).get(fillId);
    if (found === undefined || fill === undefined) throw new Error("visit and fill are on file");
    const plan = await recordPlan(work, found);
    const spray = plan.mixes.find(({ kind }) => kind === "spray");
    if (spray === undefined) throw new Error("the visit has a spray");
    const planned = plan.treatments.filter(({ line }) => linesOf(spray).includes(line));
    return (await unplannedInFills(work, plan, [{ key: "2", planned, lawns: spray.lawns, fills: [fill] }])).get("2");
  });
}

test("a fill of what was planned holds nothing beside it", async () => {
  expect(await besideIron()).toBeUndefined();
});

test("each other product has a line after the plan's, the lawns of the mix, and its label's facts as far as they are on file", async () => {
  const [single, several, unread] = [await aLiquidWith("Foliar iron"), await aLiquidWith("Foliar iron", "Drench"), await aLiquidWith()];
  const beside = await besideIron(single, several, unread);
  expect(beside?.map(({ line }) => line).toSorted()).toEqual([3, 4, 5]);
  const of = (productId: string) => beside?.find((one) => one.productId === productId);
  expect(of(single)).toMatchObject({ countedBy: "volume", rateText: "not planned here", lawns: [{ name: "Front" }, { name: "Back" }], label: { use: { useName: "Foliar iron" } } });
  expect(of(several)).toMatchObject({ label: { use: "not-known" } });
  expect(of(unread)).toMatchObject({ label: "not-on-file" });
});
