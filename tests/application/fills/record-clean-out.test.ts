import { describe, expect, test } from "vitest";
import { recordCleanOut } from "#application/fills/record-clean-out";
import { aCompany, trailOf, valueOf } from "../../support/crew";
import { of } from "#domain/quantities/quantity";
import { listFills } from "#application/fills/list-fills";
import { previewCleanOut } from "#application/fills/preview-clean-out";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { aCrewDay, aFedVisit, aFill, aRecord, aSharedFill, cleanOutForm, tankReadingForm } from "../../support/crew-day";
import { allOnACrewDay, company, day, house } from "../../support/on-a-crew-day";

allOnACrewDay("not-known");

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
  await aFill(house, company, day, [], { filledAt: "7:45" });
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
  const otherDay = await aCrewDay(house, other, "not-known");
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
  for (const sql of ["update clean_out set how = 'Not at all'", "delete from clean_out", "truncate clean_out cascade"]) await expect(house.ask(sql)).rejects.toThrow("append-only");
});

async function fieldsOf(change: Change) {
  const answer = await record(change);
  return !answer.ok && answer.refusal.kind === "bad-input" ? Object.keys(answer.refusal.fields) : answer;
}

describe("what the tank still held by the books", () => {
  const ounces = (value: string | bigint) => of("fl oz", value).amount;

  /** A company of its own with a fill of 40 gal and 30 fl oz at 7:15, of which its first visit sprayed 12 gal until 7:20. */
  async function aTankDrawn() {
    const own = await aCompany(house);
    const itsDay = await aCrewDay(house, own, "not-known");
    const { visits, fillId, number } = await aSharedFill(house, own, itsDay);
    const [first, second] = visits;
    if (first === undefined || second === undefined) throw new Error("three visits share the fill");
    const spray = (visit: typeof first, amount: string, startedAt: string, endedAt: string) =>
      aRecord(house, own.owner, visit, { startedAt, endedAt, mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount, fillId } } });
    await spray(first, "12", "7:16", "7:20");
    const form = (change: Change = {}) => cleanOutForm(house, itsDay, own.owner.personId, change);
    const clean = (change: Change = {}) => recordCleanOut(house, own.owner.key, form(change));
    const ledger = async () => {
      const balances = await house.ask<{ kind: string; amount: string }>(
        `select l.kind, sum(b.amount)::text as amount from stock_balance b join stock_location l using (company_id, stock_location_id) join lot using (company_id, lot_id)
         where b.company_id = $1 and lot.product_id = $2 and l.kind not in ('shop', 'truck', 'supplier') and b.amount <> 0 group by l.kind`,
        [own.companyId, itsDay.ironId],
      );
      return Object.fromEntries(balances.map(({ kind, amount }) => [kind, BigInt(amount)]));
    };
    const tank = async () => valueOf(await listFills(house, own.owner.key, {})).tanks.find(({ equipmentId }) => equipmentId === itsDay.sprayerId);
    return { own, itsDay, second, number, spray, form, clean, ledger, tank };
  }

  test("is read back before it is written, and leaves for rinsate, or for loss where it went elsewhere", async () => {
    const { own, number, form, clean, ledger, tank } = await aTankDrawn();
    const preview = valueOf(await previewCleanOut(house, own.owner.key, form()));
    expect(preview).toMatchObject({ went: "rinsate", tank: { inTheBooks: of("gal", 28n), fills: [{ number, left: of("gal", 0n) }], lots: [{ lotNumber: "IR-1", leaves: ounces(21n) }] }, findings: [{ rule: "visits-not-recorded" }] });
    valueOf(await clean());
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(21n) });
    expect(await tank()).toMatchObject({ isClean: true, left: of("gal", 0n), movedByCleanOut: [{ leaves: ounces(21n) }], fills: [{ left: of("gal", 0n), found: { inTheBooks: of("gal", 28n), left: of("gal", 0n) }, findings: [] }] });
    const elsewhere = await aTankDrawn();
    valueOf(await elsewhere.clean({ rinsateWent: "elsewhere", rinsateWhere: "A hauler's drum" }));
    expect(await elsewhere.ledger()).toEqual({ lawn: ounces(9n), loss: ounces(21n) });
    expect(await house.ask("select kind, note from stock_posting where company_id = $1 and kind = 'lose'", [elsewhere.own.companyId])).toEqual([{ kind: "lose", note: "Clean-out; the rinsate went elsewhere: A hauler's drum" }]);
  });

  test("onto a labeled site it is rinsed out too, and the label's rates are called to mind", async () => {
    const { own, second, form, clean, ledger } = await aTankDrawn();
    const change = { rinsateWent: "labeled-site", rinsateVisitId: second.visitId } as const;
    expect(valueOf(await previewCleanOut(house, own.owner.key, form(change))).findings.map(({ rule }) => rule)).toEqual(["rinsate-on-labeled-site", "visits-not-recorded"]);
    valueOf(await clean(change));
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(21n) });
  });

  test("a visit that sprayed before and is recorded later takes its part back out of the rinsate", async () => {
    const { second, spray, clean, ledger, tank } = await aTankDrawn();
    valueOf(await clean());
    await spray(second, "20", "7:21", "7:29");
    expect(await ledger()).toEqual({ lawn: ounces(24n), rinsate: ounces(6n) });
    expect(await tank()).toMatchObject({ left: of("gal", 0n), fills: [{ findings: [] }] });
  });

  test("is moved once, by two at once too; a clean-out before a later reading moves nothing", async () => {
    const { own, form, clean, ledger } = await aTankDrawn();
    const pressed = form();
    await Promise.all([recordCleanOut(house, own.owner.key, pressed), recordCleanOut(house, own.owner.key, pressed), clean()]);
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(21n) });
    const other = await aTankDrawn();
    valueOf(await recordTankReading(house, other.own.owner.key, tankReadingForm(house, other.itsDay, other.own.owner.personId, { readAt: "7:40", volume: "28" })));
    expect(valueOf(await previewCleanOut(house, other.own.owner.key, other.form())).tank).toBeNull();
    valueOf(await other.clean());
    expect(await other.ledger()).toEqual({ lawn: ounces(9n), tank: ounces(21n) });
  });

  test("a fill after the clean-out stays whole, and an earlier clean-out takes what was in it then", async () => {
    const { own, itsDay, clean, ledger } = await aTankDrawn();
    await aFill(house, own, itsDay, [], { filledAt: "7:45" });
    valueOf(await clean());
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(21n), tank: ounces(30n) });
  });
});
