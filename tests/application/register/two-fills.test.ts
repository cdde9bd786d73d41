// A visit that takes more than one tank holds, from its form to everything that counts by its record.
import { describe, expect, test } from "vitest";
import { listFills } from "#application/fills/list-fills";
import { completeVisit } from "#application/register/complete-visit";
import { listRegister } from "#application/register/list-register";
import { readRecord } from "#application/register/read-record";
import { readRecordPlan } from "#application/register/read-record-plan";
import { of } from "#domain/quantities/quantity";
import { fillsOf } from "#domain/register/record-content";
import { valueOf } from "../../support/crew";
import { aFedVisit, aFill, aRecord, completeForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";
import { firstBroken, unbalanced } from "../../support/ledger";
import { balancesOf } from "../../support/shed";

eachOnACrewDay();

const AS_PLANNED = { measuredBy: "as-planned-not-measured" } as const;

/** A visit with a fill of 100 gal and one of 50 gal, an ounce of iron in every gallon. */
async function twoFills() {
  const visit = await aFedVisit(house, company, day);
  const fill = async (filledAt: string, gallons: string) =>
    (await aFill(house, company, day, [visit.visitId], { filledAt, finished: `${gallons} gal`, products: { [day.ironId]: `${gallons} fl oz` } })).fillId;
  return { visit, a: await fill("7:15", "100"), b: await fill("7:45", "50") };
}
type TwoFills = Awaited<ReturnType<typeof twoFills>>;

const metered = ({ a, b }: Pick<TwoFills, "a" | "b">, first: string, second: string) => ({ measuredBy: "meter", amount: first, fillId: a, alsoFrom: { "0": { amount: second, fillId: b }, "1": { amount: "", fillId: "" } } }) as const;

async function ironOf(registerEntryId: string) {
  const { content } = valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record;
  return { content, iron: content.treatments.find(({ productId }) => productId === day.ironId) };
}

describe("a record out of two fills", () => {
  test("has the product of both, each from its own, and takes both off the books", async () => {
    const two = await twoFills();
    const { registerEntryId } = await aRecord(house, company.owner, two.visit, { mixes: { "1": AS_PLANNED, "2": metered(two, "100 gal", "50") } });
    const { content, iron } = await ironOf(registerEntryId);
    expect(iron?.total.amount).toBe(of("fl oz", "150").amount.toString());
    expect(iron && fillsOf(iron).map(({ fillId, number, sprayed }) => [fillId, number, sprayed.words])).toEqual([[two.a, 1, "100 gal"], [two.b, 2, "50 gal"]]);
    expect(iron?.lots).toMatchObject([{ number: "IR-1", amount: { amount: of("fl oz", "150").amount.toString() } }]);
    expect(content.findings.map(({ rule }) => rule)).not.toContain("more-sprayed-than-filled");
    expect((await balancesOf(house, day.ironId))["tank"]).toBe("0");
    expect(await unbalanced(house)).toEqual([]);
    const [tank] = valueOf(await listFills(house, company.owner.key, {})).tanks;
    expect(tank?.fills.map(({ fillId, left, draws }) => [fillId, left, draws.map(({ volume, isMeasured }) => [volume, isMeasured])])).toEqual([
      [two.b, of("gal", 0n), [[of("gal", 50n), true]]],
      [two.a, of("gal", 0n), [[of("gal", 100n), true]]],
    ]);
  });

  test("counts whole on its lawns and toward the label's highest, which neither fill reached alone", async () => {
    // The iron's highest is 2 fl oz per 1,000 sq ft, which are 12.8 fl oz on both lawns.
    const [one, two] = [await twoFills(), await twoFills()];
    const gallons = (first: string) => ({ measuredBy: "meter", amount: first, fillId: one.a }) as const;
    const single = await ironOf((await aRecord(house, company.owner, one.visit, { startedAt: "7:50", endedAt: "8:10", mixes: { "1": AS_PLANNED, "2": gallons("8 gal") } })).registerEntryId);
    const double = await ironOf((await aRecord(house, company.owner, two.visit, { startedAt: "8:20", endedAt: "8:50", mixes: { "1": AS_PLANNED, "2": metered(two, "8 gal", "8 gal") } })).registerEntryId);
    const aboveLabel = ({ content }: typeof single) => content.findings.filter(({ rule }) => rule === "put-down-above-label").length;
    expect([aboveLabel(single), aboveLabel(double)]).toEqual([0, 2]);
    expect(double.iron?.lawns.reduce((total, { amount }) => total + BigInt(amount.amount), 0n)).toBe(of("fl oz", "16").amount);
  });

  test("stands in the chain after one out of a single fill, whose form is as it was", async () => {
    const [one, two] = [await twoFills(), await twoFills()];
    const single = await aRecord(house, company.owner, one.visit, { startedAt: "7:50", endedAt: "8:20", mixes: { "1": AS_PLANNED, "2": { measuredBy: "meter", amount: "9 gal", fillId: one.a } } });
    const double = await aRecord(house, company.owner, two.visit, { startedAt: "8:30", endedAt: "8:50", mixes: { "1": AS_PLANNED, "2": metered(two, "6 gal", "3 gal") } });
    const texts = await house.ask<{ content: string }>("select content from register_entry where company_id = $1 order by number", [company.companyId]);
    expect(texts.map(({ content }) => [content.includes('"form":"application-record-1"'), content.includes("furtherFills")])).toEqual([[true, false], [true, true]]);
    expect(await firstBroken(house, company.companyId)).toBeNull();
    for (const { registerEntryId } of [single, double]) expect(valueOf(await readRecord(house, company.owner.key, { registerEntryId })).record.isUnaltered).toBe(true);
    expect(valueOf(await listRegister(house, company.owner.key, {})).chain).toMatchObject({ kind: "whole" });
  });

  test("as planned empties the first and takes the rest from the second", async () => {
    const visit = await aFedVisit(house, company, day);
    const fill = async (filledAt: string, finished: string) => (await aFill(house, company, day, [visit.visitId], { filledAt, finished, products: { [day.ironId]: "9 fl oz" } })).fillId;
    const fillIds = [await fill("7:15", "5 gal"), await fill("7:45", "8 gal")];
    const [, spray] = valueOf(await readRecordPlan(house, company.owner.key, { visitId: visit.visitId })).mixes;
    expect(spray?.fillIds).toEqual(fillIds);
    const mix = { ...AS_PLANNED, fillId: fillIds[0], alsoFrom: [{ fillId: fillIds[1], amount: "" }] };
    await aRecord(house, company.owner, visit, { mixes: { "1": AS_PLANNED, "2": mix } });
    const draws = await house.ask<{ fill_id: string; volume: string; is_measured: boolean }>("select fill_id, volume::text, is_measured from fill_draw order by volume desc");
    const first = of("gal", 5n).amount;
    expect(draws.find(({ fill_id: fillId }) => fillId === fillIds[0])).toMatchObject({ volume: first.toString(), is_measured: false });
    expect(draws.find(({ fill_id: fillId }) => fillId === fillIds[1])).toMatchObject({ volume: ((spray?.planned?.amount ?? 0n) - first).toString(), is_measured: false });
  });
});

test("refused are gallons without a fill, other fills without the first, and one fill twice", async () => {
  const { visit, a, b } = await twoFills();
  const fields = async (mix: object) => {
    const answer = await completeVisit(house, company.owner.key, completeForm(house, company.owner.personId, visit, { mixes: { "1": AS_PLANNED, "2": { measuredBy: "meter", amount: "5 gal", ...mix } } }));
    return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
  };
  const further = (...rows: readonly { readonly amount: string; readonly fillId: string }[]) => ({ alsoFrom: rows });
  expect(await fields({ fillId: a, ...further({ amount: "", fillId: "" }, { amount: "4 gal", fillId: "" }) })).toEqual({ "mixes.2.alsoFrom.1.fillId": "Choose the fill that these gallons came out of." });
  expect(await fields({ fillId: "", ...further({ amount: "4 gal", fillId: b }) })).toEqual({ "mixes.2.fillId": "Choose the first fill too, or take the others off: what was mixed for this visit alone has none." });
  for (const [rows, row] of [[[a], "0"], [[b, b], "1"]] as const) {
    expect(await fields({ fillId: a, ...further(...rows.map((fillId) => ({ amount: "4 gal", fillId }))) })).toEqual({ [`mixes.2.alsoFrom.${row}.fillId`]: "This fill is named twice. Put its gallons together." });
  }
  expect(await fields({ fillId: a, ...further({ amount: "", fillId: b }) })).toEqual({ "mixes.2.alsoFrom.0.amount": "Say how many gallons came out of fill 2." });
});
