import { expect, test } from "vitest";
import { previewFill } from "#application/fills/preview-fill";
import { of } from "#domain/quantities/quantity";
import { valueOf } from "../../support/crew";
import { aFedVisit, aFill, fillForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay();

const preview = (change: Parameters<typeof fillForm>[3] = {}, visitIds: readonly string[] = []) => previewFill(house, company.owner.key, fillForm(house, day, visitIds, change));

test("says what would be recorded beside the books, the plan and the label, and writes nothing", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  await aFill(house, company, day, [], { filledAt: "7:00" });
  const before = await house.books();
  const fill = valueOf(await preview({ gaugeBefore: "38 gal", gaugeAfter: "138 gal", products: { [day.ironId]: "1000 fl oz" } }, [visitId]));
  expect(fill).toMatchObject({ equipmentName: "100 gal tank", gauge: { before: of("gal", 38n), after: of("gal", 138n) }, inTheBooks: of("gal", 40n), finished: of("gal", 100n), mixingPlace: "Shop yard", fromName: expect.stringMatching(/^Truck \d+$/u) as string });
  expect(fill.products).toMatchObject([{ productId: day.ironId, amount: of("fl oz", 1000n) }]);
  expect(fill.findings.map(({ level, rule }) => `${level} ${rule}`)).toEqual(["hold fill-above-label", "take-care gauge-not-as-books", "take-care fill-above-tank", "take-care fill-strength-not-as-planned", "take-care count-it"]);
  expect(await house.books()).toEqual(before);
});

test("as planned, on top of what the books have, nothing is found", async () => {
  const { visitId } = await aFedVisit(house, company, day);
  expect(valueOf(await preview({ gaugeBefore: "40 gal", gaugeAfter: "80 gal" }, [visitId])).findings).toEqual([]);
});

test("refuses what recording it would refuse", async () => {
  expect(await preview({ gaugeBefore: "40" })).toMatchObject({ ok: false, refusal: { kind: "bad-input", fields: { gaugeAfter: expect.any(String) as string } } });
  expect(await preview({ filledAt: "9:01" })).toMatchObject({ ok: false, refusal: { kind: "bad-input" } });
  expect(await preview({ equipmentId: house.newId() })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
});
