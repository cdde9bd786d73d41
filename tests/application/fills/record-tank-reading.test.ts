import { describe, expect, test } from "vitest";
import { listFills } from "#application/fills/list-fills";
import { recordFill } from "#application/fills/record-fill";
import { recordTankReading } from "#application/fills/record-tank-reading";
import { tanksHeld } from "#application/days/tanks-held";
import { fillsAtHand } from "#application/register/fill-at-hand";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { of } from "#domain/quantities/quantity";
import { aCompany, trailOf, valueOf } from "../../support/crew";
import { aCleanOut, aCrewDay, aFill, aRecord, aSharedFill, CREW_DAY, fillForm, inWorkOf, tankReadingForm } from "../../support/crew-day";
import { company, day, eachOnACrewDay, house } from "../../support/on-a-crew-day";

eachOnACrewDay("not-known");

type Change = Parameters<typeof tankReadingForm>[3];
const form = (change: Change = {}) => tankReadingForm(house, day, company.owner.personId, change);
const record = (change: Change = {}) => recordTankReading(house, company.owner.key, form(change));
const ounces = (value: string | bigint) => of("fl oz", value).amount;

/** 40 gal with 30 fl oz of iron at 7:15, so that 4 gal hold 3 fl oz; the first of its visits sprayed so much of it until 7:18. */
async function aFillDrawn(gallons: string) {
  const shared = await aSharedFill(house, company, day);
  const [first, second] = shared.visits;
  if (first === undefined || second === undefined) throw new Error("three visits share the fill");
  await spray(first, shared.fillId, gallons, "7:16", "7:18");
  return { ...shared, second };
}

function spray(visit: Parameters<typeof aRecord>[2], fillId: string, gallons: string, startedAt: string, endedAt: string) {
  return aRecord(house, company.owner, visit, { startedAt, endedAt, mixes: { "1": { measuredBy: "as-planned-not-measured" }, "2": { measuredBy: "meter", amount: gallons, fillId } } });
}

/** What the ledger has of the iron at each kind of location but shop, truck and supplier. */
async function ledger() {
  const rows = await house.ask<{ kind: string; amount: string }>(
    `select l.kind, sum(b.amount)::text as amount from stock_balance b join stock_location l using (company_id, stock_location_id) join lot using (company_id, lot_id)
     where b.company_id = $1 and lot.product_id = $2 and l.kind not in ('shop', 'truck', 'supplier') and b.amount <> 0 group by l.kind`,
    [company.companyId, day.ironId],
  );
  return Object.fromEntries(rows.map(({ kind, amount }) => [kind, BigInt(amount)]));
}

const postings = () => house.ask<{ kind: string; note: string | null }>("select kind, note from stock_posting where company_id = $1 and kind in ('lose', 'count') order by entered_at", [company.companyId]);
const readings = () => house.ask<{ tank_reading_id: string; missing_went: string | null }>("select * from tank_reading where company_id = $1 order by read_at", [company.companyId]);

async function tankNow() {
  const tank = valueOf(await listFills(house, company.owner.key, {})).tanks.find(({ equipmentId }) => equipmentId === day.sprayerId);
  if (tank === undefined) throw new Error("the sprayer has a tank");
  return tank;
}

/** What everybody who asks is told to be left: the listing, the plan of a day, and the form that completes a visit. */
async function heldNow() {
  return (await inWorkOf(house, company, (work) => tanksHeld(work, { date: CREW_DAY as CalendarDate, visitIds: [] }))).get(day.sprayerId);
}

async function leftEverywhere(fillId: string) {
  const held = await heldNow();
  const atHand = (await inWorkOf(house, company, (work) => fillsAtHand(work, [fillId], house.now()))).get(fillId);
  if (held === undefined || typeof held === "string" || atHand === undefined) throw new Error("the tank holds a fill");
  return { listed: (await tankNow()).left, held: held.left, atHand: atHand.finished.amount - atHand.drawn.amount };
}
const everywhere = (gallons: string) => ({ listed: of("gal", gallons), held: of("gal", gallons), atHand: of("gal", gallons).amount });

async function fieldsOf(change: Change) {
  const answer = await record(change);
  return !answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer;
}

describe("what is missing", () => {
  test("leaves the tank for where it is said to have gone, in one posting, and everybody has what was found", async () => {
    const { fillId, number } = await aFillDrawn("12");
    const { tankReadingId } = valueOf(await record({ volume: "24 gal", missingWent: "loss", note: "The hose burst" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), loss: ounces(3n), tank: ounces(18n) });
    expect(await postings()).toEqual([{ kind: "lose", note: "The hose burst" }]);
    expect(await leftEverywhere(fillId)).toEqual(everywhere("24"));
    const { fills, readings: found } = await tankNow();
    expect(fills).toMatchObject([{ number, left: of("gal", 24n), leftOf: [{ amount: of("fl oz", 18n) }], found: { left: of("gal", 24n), inTheBooks: of("gal", 28n) }, findings: [] }]);
    expect(found).toMatchObject([{ tankReadingId, readBy: company.owner.name, how: "Dipstick", volume: of("gal", 24n), inTheBooks: of("gal", 28n), missingWent: "loss", note: "The hose burst", moved: [{ lotNumber: "IR-1", leaves: ounces(3n) }] }]);
    expect((await trailOf(house, company.companyId)).at(-1)).toMatchObject({ deed: "tank-measured", subject_id: tankReadingId, details: { found: "24 gal", inTheBooks: "28 gal", missingWent: "loss" } });
  });

  test("goes to rinsate and to count difference as well, and all of it from an empty tank", async () => {
    const { fillId } = await aFillDrawn("12");
    valueOf(await record({ readAt: "7:19", volume: "24", missingWent: "rinsate" }));
    valueOf(await record({ readAt: "7:20", volume: "0", missingWent: "count-difference" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(3n), "count-difference": ounces(18n) });
    expect((await postings()).map(({ kind }) => kind)).toEqual(["lose", "count"]);
    expect(await leftEverywhere(fillId)).toEqual(everywhere("0"));
  });

  test("is refused while nobody says where it went, with what the books have", async () => {
    await aFillDrawn("12");
    expect(await fieldsOf({ volume: "24" })).toEqual({ missingWent: "The books have 28 gal in it, 4 gal more. Say where that went." });
    expect(await readings()).toEqual([]);
  });
});

describe("what is more", () => {
  test("comes from count difference at the mix of the fill", async () => {
    const { fillId } = await aFillDrawn("12");
    valueOf(await record({ volume: "30", missingWent: "count-difference" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), "count-difference": -ounces("1.5"), tank: ounces("22.5") });
    expect(await readings()).toMatchObject([{ missing_went: null }]);
    expect(await leftEverywhere(fillId)).toEqual(everywhere("30"));
  });

  test("can't have been lost", async () => {
    await aFillDrawn("12");
    expect(Object.keys(await fieldsOf({ volume: "30", missingWent: "loss" }))).toEqual(["missingWent"]);
    expect(Object.keys(await fieldsOf({ volume: "28", missingWent: "rinsate" }))).toEqual(["missingWent"]);
  });

  test("in a tank without a fill on the books is of nothing known: it is kept, and no stock moves", async () => {
    valueOf(await record({ volume: "5" }));
    expect(await ledger()).toEqual({});
    expect(await tankNow()).toMatchObject({ left: of("gal", 5n), fills: [], readings: [{ volume: of("gal", 5n), inTheBooks: of("gal", 0n) }] });
  });
});

describe("as in the books", () => {
  test("no stock moves, and what is left is known from then on", async () => {
    const { fillId } = await aFillDrawn("12");
    valueOf(await record({ volume: "28" }));
    expect(await postings()).toEqual([]);
    expect(await ledger()).toEqual({ lawn: ounces(9n), tank: ounces(21n) });
    expect(await leftEverywhere(fillId)).toEqual(everywhere("28"));
  });
});

describe("visits around a reading", () => {
  test("one that sprayed before it and is recorded after it takes what was missing, and the tank stays as it was found", async () => {
    const { fillId, second } = await aFillDrawn("12");
    valueOf(await record({ volume: "18", missingWent: "loss" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), loss: ounces("7.5"), tank: ounces("13.5") });
    const written = await spray(second, fillId, "8", "7:19", "7:24");
    // 8 of the 10 gal that were missing were sprayed; 2 gal were spilled.
    expect(await ledger()).toEqual({ lawn: ounces(15n), loss: ounces("1.5"), tank: ounces("13.5") });
    expect(await leftEverywhere(fillId)).toEqual(everywhere("18"));
    const [row] = await house.ask<{ content: string }>("select content from register_entry where register_entry_id = $1", [written.registerEntryId]);
    expect(row?.content).toContain("fill-settled-since");
  });

  test("each explains the first reading or clean-out after it, however late it is recorded", async () => {
    const { fillId, second, visits } = await aFillDrawn("12");
    const third = visits[2];
    if (third === undefined) throw new Error("three visits share the fill");
    valueOf(await record({ volume: "18", missingWent: "count-difference" }));
    await aCleanOut(house, company, day, { cleanedAt: "8:00" });
    expect(await ledger()).toEqual({ lawn: ounces(9n), "count-difference": ounces("7.5"), rinsate: ounces("13.5") });
    await spray(second, fillId, "10", "7:19", "7:24");
    await spray(third, fillId, "16", "7:40", "7:55");
    // Of the 40 gal 38 were sprayed, and the 2 that were left went to rinsate.
    expect(await ledger()).toEqual({ lawn: ounces("28.5"), rinsate: ounces("1.5") });
  });

  test("more than was missing comes from count difference, and the record has the lot once", async () => {
    const { fillId, second } = await aFillDrawn("12");
    valueOf(await record({ volume: "24", missingWent: "loss" }));
    const written = await spray(second, fillId, "6", "7:19", "7:24");
    expect(await ledger()).toEqual({ lawn: ounces("13.5"), "count-difference": -ounces("1.5"), tank: ounces(18n) });
    const [row] = await house.ask<{ content: string }>("select content from register_entry where register_entry_id = $1", [written.registerEntryId]);
    const { treatments } = JSON.parse(row?.content ?? "{}") as { treatments: readonly { readonly lots: readonly unknown[] }[] };
    expect(treatments.at(-1)?.lots).toHaveLength(1);
  });

  test("one that sprayed after it takes from what was found", async () => {
    const { fillId, second } = await aFillDrawn("12");
    valueOf(await record({ volume: "24", missingWent: "loss" }));
    await spray(second, fillId, "8", "7:31", "8:00");
    expect(await ledger()).toEqual({ lawn: ounces(15n), loss: ounces(3n), tank: ounces(12n) });
    expect(await leftEverywhere(fillId)).toEqual(everywhere("16"));
  });

  test("two readings say what left the tank between them, beside the records", async () => {
    const { fillId, second } = await aFillDrawn("12");
    valueOf(await record({ readAt: "7:19", volume: "28" }));
    await spray(second, fillId, "8", "7:20", "7:25");
    valueOf(await record({ volume: "19", missingWent: "count-difference" }));
    expect((await tankNow()).readings.map(({ sinceLast }) => sinceLast)).toEqual([{ byReading: of("gal", 9n), byRecords: of("gal", 8n) }, null]);
  });
});

describe("readings in their order", () => {
  test("none comes before a later reading or clean-out, or into its minute, and nothing in the future", async () => {
    await aFillDrawn("12");
    valueOf(await record({ volume: "28" }));
    for (const readAt of ["7:29", "7:30"]) expect(Object.keys(await fieldsOf({ readAt, volume: "28" }))).toEqual(["readAt"]);
    await aCleanOut(house, company, day, { cleanedAt: "7:40" });
    for (const readAt of ["7:35", "7:40", "9:01"]) expect(Object.keys(await fieldsOf({ readAt, volume: "28" }))).toEqual(["readAt"]);
    valueOf(await record({ readAt: "7:41", volume: "1" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), rinsate: ounces(21n) });
  });

  test("a fill that is entered after a reading of its time is not settled by it, and says so", async () => {
    valueOf(await record({ volume: "0" }));
    await aFill(house, company, day, [], { filledAt: "7:20" });
    expect((await tankNow()).fills[0]).toMatchObject({ left: of("gal", 40n), findings: [{ rule: "fill-entered-after-reading" }] });
  });

  test("a fill after it stands whole beside what was found", async () => {
    await aFillDrawn("12");
    await aFill(house, company, day, [], { filledAt: "7:45" });
    valueOf(await record({ volume: "24", missingWent: "loss" }));
    expect(await ledger()).toEqual({ lawn: ounces(9n), loss: ounces(3n), tank: ounces(48n) });
    expect((await tankNow()).fills.map(({ left }) => left)).toEqual([of("gal", 40n), of("gal", 24n)]);
    // The later fill on top, and what was found of the first one under it.
    expect(await heldNow()).toMatchObject({ left: of("gal", 40n), under: [{ name: "fill 1", left: of("gal", 24n) }] });
  });
});

describe("pressed twice and at once", () => {
  test("the first reading is answered; other figures are refused", async () => {
    await aFillDrawn("12");
    const pressed = form({ volume: "24", missingWent: "loss" });
    const first = valueOf(await recordTankReading(house, company.owner.key, pressed));
    expect(valueOf(await recordTankReading(house, company.owner.key, pressed))).toEqual(first);
    for (const change of [{ volume: "23" }, { missingWent: "rinsate" }, { note: "Spilled" }, { how: "Gauge" }, { readAt: "7:31" }] as const) {
      expect(await recordTankReading(house, company.owner.key, { ...pressed, ...change })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
    }
    expect(await ledger()).toEqual({ lawn: ounces(9n), loss: ounces(3n), tank: ounces(18n) });
    const other = form({ readAt: "7:31", volume: "24", missingWent: "count-difference" });
    expect(valueOf(await recordTankReading(house, company.owner.key, other))).toEqual(valueOf(await recordTankReading(house, company.owner.key, other)));
  });

  test("the same form at once is one reading, and two people's readings of one minute are one", async () => {
    await aFillDrawn("12");
    const pressed = form({ volume: "24", missingWent: "loss" });
    const both = await Promise.all([recordTankReading(house, company.owner.key, pressed), recordTankReading(house, company.owner.key, pressed)]);
    expect(new Set(both.map((answer) => valueOf(answer).tankReadingId)).size).toBe(1);
    const rivals = await Promise.all([record({ readAt: "7:31", volume: "20", missingWent: "loss" }), record({ readAt: "7:31", volume: "16", missingWent: "loss" })]);
    expect(rivals.map(({ ok }) => ok).toSorted()).toEqual([false, true]);
    const [, second] = await readings();
    const left = rivals[0].ok ? 15n : 12n;
    expect(second).toMatchObject({ missing_went: "loss" });
    expect(await ledger()).toEqual({ lawn: ounces(9n), loss: ounces(21n - left), tank: ounces(left) });
  });

  test("a reading and a record at once end in the same books, whichever came first", async () => {
    const { fillId, second } = await aFillDrawn("12");
    await Promise.all([record({ volume: "16", missingWent: "loss" }), spray(second, fillId, "8", "7:19", "7:24")]);
    expect(await ledger()).toEqual({ lawn: ounces(15n), loss: ounces(3n), tank: ounces(12n) });
    expect(await leftEverywhere(fillId)).toEqual(everywhere("16"));
  });

  test("a request that posted something else is refused", async () => {
    const filled = fillForm(house, day, [], { filledAt: "7:00" });
    valueOf(await recordFill(house, company.owner.key, filled));
    expect(await record({ requestId: filled.requestId, volume: "0", missingWent: "loss" })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  });
});

test("is refused for what is no reading: another company's sprayer, a spreader, nobody, no words, no volume", async () => {
  const other = await aCompany(house);
  const otherDay = await aCrewDay(house, other, "not-known");
  expect(await record({ equipmentId: otherDay.sprayerId })).toMatchObject({ ok: false, refusal: { kind: "not-found" } });
  for (const [change, field] of [[{ equipmentId: day.spreaderId }, "equipmentId"], [{ readById: other.owner.personId }, "readById"], [{ how: " " }, "how"], [{ volume: "" }, "volume"], [{ volume: "5 lb" }, "volume"]] as const) {
    expect(Object.keys(await fieldsOf(change))).toEqual([field]);
  }
  expect(await readings()).toEqual([]);
});

test("what is written can't be changed or taken out, by the owner of the tables either", async () => {
  await aFillDrawn("12");
  valueOf(await record({ volume: "24", missingWent: "loss" }));
  for (const table of ["tank_reading", "fill_rest"]) {
    const column = table === "tank_reading" ? "volume" : "remaining";
    for (const sql of [`update ${table} set ${column} = 0`, `delete from ${table}`, `truncate ${table} cascade`]) await expect(house.ask(sql)).rejects.toThrow("append-only");
  }
});
