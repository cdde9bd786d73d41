// Two products in one fill of which not both have a mix ticket: the fill was drawn from once.
import { describe, expect, test } from "vitest";
import { productUseKey } from "#application/programs/treatment-fields.schema";
import { completeVisit } from "#application/register/complete-visit";
import { readRecord } from "#application/register/read-record";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aFill, aGround, aJug, aRecord, aVisitWith, completeForm } from "../../support/crew-day";
import { A_WHOLE_IRON_TEXT } from "../../support/label-texts";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { aConfirmedLabel, aLiquid } from "../../support/shed";
import { unbalanced } from "../../support/ledger";

eachOnACrewDay();

/** Iron and another liquid on both lawns, 30 and 40 fl oz of them in a fill of 40 gal; these lines have no mix ticket. */
async function twoInOneFill(...withoutTicket: readonly number[]) {
  const herbId = await aLiquid(house, company);
  await aConfirmedLabel(house, company, herbId, A_WHOLE_IRON_TEXT);
  await aJug(house, company, day, herbId);
  const ground = await aGround(house, company);
  const lawns = { [ground.frontId]: "yes", [ground.backId]: "yes" } as const;
  const task = (productId: string) => ({ productUse: productUseKey(productId, "Foliar iron"), rate: "1.5 fl oz/1,000 sq ft", reason: "color", lawns });
  const visitId = await aVisitWith(house, company, { ...ground, routeDayId: day.routeDayId }, { "0": task(day.ironId), "1": task(herbId) });
  for (const line of withoutTicket) await house.ask("update visit_task set label_use = 'no such use' where visit_id = $1 and line = $2", [visitId, line]);
  const { fillId } = await aFill(house, company, day, [visitId], { products: { [day.ironId]: "30 fl oz", [herbId]: "40 fl oz" } });
  return { visit: { ...ground, visitId }, fillId, herbId };
}
type Mixes = NonNullable<Parameters<typeof completeForm>[3]>["mixes"];
type Two = Awaited<ReturnType<typeof twoInOneFill>>;

async function recorded({ visit, fillId, herbId }: Two, mixes: Mixes) {
  const { registerEntryId } = await aRecord(house, company.owner, visit, mixes === undefined ? {} : { mixes });
  const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
  const totals = content.treatments.map(({ productId, total }) => [productId === herbId ? "herb" : "iron", total.words]);
  const ofFills = content.findings.map(({ rule }) => rule).filter((rule) => rule.startsWith("product-"));
  const draws = await house.ask<{ volume: string }>("select volume::text from fill_draw where fill_id = $1", [fillId]);
  return { totals, ofFills, drawn: draws.map(({ volume }) => volume) };
}

async function fieldsOf({ visit }: Two, mixes: Mixes) {
  const answer = await completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, visit, { mixes }));
  return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
}

const gallons = (amount: string, fillId: string) => ({ measuredBy: "meter", amount, fillId }) as const;
const TEN = of("gal", 10n).amount.toString();

describe("a fill that two lines name for the same lawns", () => {
  test("is drawn from once, where neither has a ticket and where only one lost it, whether the gallons are said again or not", async () => {
    for (const [without, again] of [[[1, 2], "10 gal"], [[2], "10"], [[1], ""]] as const) {
      const two = await twoInOneFill(...without);
      // What has no ticket stands after what has one.
      const [first, second] = without.length === 1 && without[0] === 1 ? ["2", "1"] : ["1", "2"];
      const answer = await recorded(two, { [first]: gallons("10 gal", two.fillId), [second]: gallons(again, two.fillId) });
      expect(answer.totals.toSorted()).toEqual([["herb", "10 fl oz"], ["iron", "7\u00BD fl oz"]]);
      expect([answer.ofFills, answer.drawn]).toEqual([[], [TEN]]);
    }
    expect(await unbalanced(house)).toEqual([]);
  });

  test("with different gallons is asked about", async () => {
    const two = await twoInOneFill(1, 2);
    expect(await fieldsOf(two, { "1": gallons("10 gal", two.fillId), "2": gallons("8 gal", two.fillId) })).toEqual({
      "mixes.2.amount": "Fill 1 was drawn from once for both, and above it says 10 gal. Which is right? Write the same gallons in both places, or leave these empty.",
    });
  });
});

describe("a product without a ticket that was in a fill which only another line names", () => {
  test("is not counted as planned on top of that: the form asks", async () => {
    const two = await twoInOneFill(1, 2);
    const asked = await fieldsOf(two, { "1": gallons("10 gal", two.fillId), "2": { measuredBy: "as-planned-not-measured" } });
    expect(asked).toEqual({ "mixes.2.fillId": expect.stringMatching(/^Fill 1, which was drawn from here, holds .* too\. Did it come out of that fill\?/u) as string });
  });

  test("counts beside it where somebody says how much more went down, and no finding says that it was not planned", async () => {
    const two = await twoInOneFill(1, 2);
    const answer = await recorded(two, { "1": gallons("10 gal", two.fillId), "2": { measuredBy: "meter", amount: "4 fl oz" } });
    expect(answer.totals).toEqual([["iron", "7\u00BD fl oz"], ["herb", "10 fl oz"], ["herb", "4 fl oz"]]);
    expect([answer.ofFills, answer.drawn]).toEqual([["product-beside-its-line"], [TEN]]);
  });
});
