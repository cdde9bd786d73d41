import { describe, expect, test } from "vitest";
import { type FillAtHand } from "#application/register/drawn-from-fills";
import { type MixEntered } from "#application/register/mix-entered";
import { type AtHand, reallyUsed, usedAsTyped } from "#application/register/really-used";
import { type Mix, type RecordTreatment } from "#application/register/record-plan";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { of } from "#domain/quantities/quantity";
import { exactly } from "#domain/quantities/exact-quantity";
import { FEED, granularOf, IRON, LAWN, QUESTION as TICKET, SPRAYER, sprayOf } from "../../support/ticket";

const IRON_PUTS = SPRAYER.carrier.rate;

const ZONES = ["front", "back"];
const BACK = { ...LAWN, zoneId: "back", letter: "B", name: "Back", area: of("sq ft", 1000n) };
const QUESTION = { lawns: [LAWN, BACK], treatments: [{ ...FEED, zoneIds: ZONES }, { ...IRON, zoneIds: ZONES }] };

function there<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error("the ticket of this test has both mixes");
  return value;
}
const spread = there(granularOf(QUESTION));
const spray = there(sprayOf(QUESTION));

function planned({ line, productId, label, use, rate, rateText, reason, gear }: TicketTreatment, countedBy: "mass" | "volume", { lawns }: Mix): RecordTreatment {
  return { line, productId, productName: label.productName, countedBy, rate, rateText, reason, equipmentName: gear.name, label: { label, use }, lawns };
}
const feed = planned(FEED, "mass", spread);
const iron = planned(IRON, "volume", spray);

const pounds = (value: string) => of("lb", value).amount;
const ounces = (value: string) => of("fl oz", value).amount;
const bagOf = (lotId: string, size: string, stockLocationId = "truck") => ({ lotId, stockLocationId, expiresOn: null, receivedOrder: 0, amount: pounds("50"), containerSize: pounds(size) });
const jug = { ...bagOf("iron-lot", "1"), amount: ounces("320"), containerSize: ounces("320") };

const FILL: FillAtHand = {
  ...{ fillId: "fill", number: 7, mixingPlace: "Shop yard", fillRestId: null, sources: [{ stockLocationId: "tank", upTo: null }], finished: of("gal", 40n), drawn: of("gal", 0n) },
  lots: [{ lotId: "iron-lot", amount: ounces("30") }],
  productOfLot: new Map([["iron-lot", "iron"]]),
  numberOfLot: new Map([["iron-lot", "IR-1"]]),
};

function atHand(change: Partial<AtHand> = {}): AtHand {
  return {
    fills: [],
    treatmentOf: (line) => (line === 1 ? feed : iron),
    beside: [],
    together: { lines: [], fills: [] },
    isPlannedOn: () => false,
    grassesOf: () => ["Kentucky bluegrass"],
    lotsOf: (productId) => (productId === "feed" ? [[bagOf("feed-lot", "50")]] : [[jug]]),
    ...change,
  };
}

// The fill is named wherever one is at hand.
const entered = (measuredBy: MixEntered["measuredBy"], amount = ""): MixEntered => ({ measuredBy, amount, fillId: "fill", alsoFrom: [] });
const AS_PLANNED = entered("as-planned-not-measured");
const EVERYWHERE = new Set(ZONES);

function usedOf(answer: ReturnType<typeof reallyUsed>) {
  if (!answer.ok) throw new Error(answer.refusal.sentence);
  return answer.value;
}
const fieldsOf = (answer: ReturnType<typeof reallyUsed>) => (!answer.ok && answer.refusal.kind === "bad-input" ? answer.refusal.fields : answer);
const totalsOf = (answer: ReturnType<typeof reallyUsed>) => usedOf(answer).used.map(({ total }) => total);

describe("what was spread", () => {
  test("as planned is what the lawns that were reached were to get", () => {
    // 2.5 lb per 1,000 sq ft on 2,000 and on 1,000 sq ft.
    expect(totalsOf(reallyUsed(spread, AS_PLANNED, EVERYWHERE, atHand()))).toEqual([of("lb", "7.5")]);
    expect(totalsOf(reallyUsed(spread, AS_PLANNED, new Set(["back"]), atHand()))).toEqual([of("lb", "2.5")]);
  });

  test("weight and bags are taken from the lots as they were measured", () => {
    expect(usedOf(reallyUsed(spread, entered("weight", "6.25"), EVERYWHERE, atHand()))).toEqual({
      used: [{ line: 1, measuredBy: "weight", total: of("lb", "6.25"), lots: [{ lotId: "feed-lot", from: "truck", amount: pounds("6.25") }], draws: [] }],
      draws: [],
      findings: [],
    });
    expect(totalsOf(reallyUsed(spread, entered("bags", "\u00BC bag"), EVERYWHERE, atHand()))).toEqual([of("lb", "12.5")]);
  });

  test("bags are counted by what the first place with any of them holds, and only where that is one size", () => {
    const bags = (...places: ReturnType<typeof bagOf>[][]) => reallyUsed(spread, entered("bags", "0.5"), EVERYWHERE, atHand({ lotsOf: () => places }));
    expect(totalsOf(bags([{ ...bagOf("gone", "40"), amount: 0n }], [bagOf("small", "20", "shop")]))).toEqual([of("lb", "10")]);
    expect(fieldsOf(bags([bagOf("large", "50"), bagOf("small", "20")]))).toEqual({ "mixes.1.amount": "Bags of more than one size are on the truck. Give the weight instead." });
    expect(fieldsOf(bags([]))).toEqual({ "mixes.1.amount": "What a bag holds is not on file. Weigh it instead." });
    expect(fieldsOf(reallyUsed(spread, entered("bags", "some"), EVERYWHERE, atHand()))).toEqual({ "mixes.1.amount": "Say how many bags were used, such as 1\u00BD or 0.25." });
  });

  test("gallons are no measure of it, and gallons typed as a weight are refused", () => {
    expect(fieldsOf(reallyUsed(spread, entered("meter", "3"), EVERYWHERE, atHand()))).toEqual({ "mixes.1.amount": "What is spread is measured in bags or weighed, or it is as planned." });
    expect(fieldsOf(reallyUsed(spread, entered("weight", "3 gal"), EVERYWHERE, atHand()))).toHaveProperty(["mixes.1.amount"]);
  });
});

describe("what was sprayed", () => {
  test("from jugs: each product in its planned proportion of the gallons, as planned for the lawns that were reached", () => {
    // 1.5 fl oz in 1.5 gal per 1,000 sq ft: an ounce in every gallon.
    expect(totalsOf(reallyUsed(spray, entered("meter", "4"), EVERYWHERE, atHand()))).toEqual([of("fl oz", "4")]);
    expect(totalsOf(reallyUsed(spray, AS_PLANNED, new Set(["front"]), atHand()))).toEqual([of("fl oz", "3")]);
    expect(fieldsOf(reallyUsed(spray, entered("weight", "4 lb"), EVERYWHERE, atHand()))).toEqual({ "mixes.2.amount": "A spray is measured in gallons, or it is as planned." });
  });

  test("from a fill: its part of each lot leaves the tank, in one draw", () => {
    const { used, draws, findings } = usedOf(reallyUsed(spray, entered("meter", "10 gal"), EVERYWHERE, atHand({ fills: [FILL] })));
    const draw = { fill: FILL, sprayed: of("gal", 10n) };
    expect(draws).toEqual([draw]);
    expect(used).toEqual([{ line: 2, measuredBy: "meter", draws: [{ ...draw, product: of("fl oz", "7.5") }], total: of("fl oz", "7.5"), lots: [{ lotId: "iron-lot", from: "tank", amount: ounces("7.5") }] }]);
    expect(findings).toEqual([]);
  });

  test("as planned is what the ground takes out of a fill, and the share of its own loads where the visit was mixed alone", () => {
    // 1,700 sq ft at 1.5 gal are 2.55 gal; a load alone is 2.6 with 2.5 fl oz.
    const small = there(sprayOf({ lawns: [{ ...LAWN, area: of("sq ft", 1500n) }, { ...BACK, area: of("sq ft", 200n) }], treatments: QUESTION.treatments }));
    const sprayed = (fills: readonly FillAtHand[], reached: ReadonlySet<string>) => usedOf(reallyUsed(small, AS_PLANNED, reached, atHand({ fills })));
    expect(sprayed([FILL], EVERYWHERE).draws.map((draw) => draw.sprayed)).toEqual([of("gal", "2.55")]);
    expect(sprayed([FILL], new Set(["front"])).draws.map((draw) => draw.sprayed)).toEqual([of("gal", "2.25")]);
    expect(sprayed([], EVERYWHERE).used.map(({ total }) => total)).toEqual(small.products.map(({ total }) => total));
    expect(sprayed([], new Set(["back"])).used.map(({ total }) => total.amount)).toEqual(small.products.map(({ total }) => (total.amount * 2n + 8n) / 17n));
  });

  test("what the mix ticket leaves of its loads went on no lawn, and the record says how much it is", () => {
    // 5 gal marks make 5 gal, of which 3,000 sq ft take 4.5; an ounce is in each.
    const large = there(sprayOf({ ...QUESTION, settings: { ...TICKET.settings, tankMark: exactly("gal", 5n) }, treatments: [{ ...IRON, zoneIds: ZONES, use: { ...IRON.use, carrier: { low: IRON_PUTS, high: IRON_PUTS, basis: "label", source: "label" } } }] }));
    const sprayed = (how: MixEntered, reached = EVERYWHERE) => {
      const { used, findings } = usedOf(reallyUsed(large, how, reached, atHand()));
      return [used.map(({ total, lots }) => [total, lots.map(({ amount }) => amount)]), findings.map(({ level, rule, figure }) => `${level} ${rule} ${figure ?? ""}`)];
    };
    const left = (words: string) => [`note left-of-the-mix ${words} Rustwater Iron. It went on no lawn, and it is not taken off the books here.`];
    expect(sprayed(AS_PLANNED)).toEqual([[[of("fl oz", "4.5"), [ounces("4.5")]]], left("64 fl oz are left, with ½ fl oz")]);
    expect(sprayed(AS_PLANNED, new Set(["front"]))).toEqual([[[of("fl oz", 3n), [ounces("3")]]], left("2 gal are left, with 2 fl oz")]);
    expect(sprayed(entered("meter", "4"))).toEqual([[[of("fl oz", 4n), [ounces("4")]]], left("1 gal are left, with 1 fl oz")]);
    expect(sprayed(entered("meter", "5"))).toEqual([[[of("fl oz", 5n), [ounces("5")]]], []]);
  });

  test("from a fill of something else: what was planned is none of it", () => {
    const { used, findings } = usedOf(reallyUsed(spray, entered("meter", "10"), EVERYWHERE, atHand({ fills: [{ ...FILL, productOfLot: new Map([["iron-lot", "another"]]) }] })));
    expect(findings.map(({ rule, figure }) => [rule, figure])).toEqual([["fill-of-another-mix", "It holds none of Rustwater Iron."]]);
    expect(used.map(({ line, total }) => [line, total.amount])).toEqual([[2, 0n]]);
  });

  test("what a fill holds beyond the plan went down too, by the same gallons and out of the same tank", () => {
    const dye = { ...iron, line: 3, productId: "dye", productName: "Marker Dye", label: "not-on-file" } as const;
    const twoLots = [...FILL.lots, { lotId: "dye-lot", amount: ounces("8") }];
    const fill: FillAtHand = { ...FILL, lots: twoLots, productOfLot: new Map([["iron-lot", "iron"], ["dye-lot", "dye"]]) };
    const at = atHand({ fills: [fill], beside: [3], treatmentOf: (line) => (line === 3 ? dye : iron) });
    const { used, findings } = usedOf(reallyUsed(spray, entered("meter", "10"), EVERYWHERE, at));
    expect(used.map(({ line, total, lots }) => [line, total, lots.map(({ from }) => from)])).toEqual([[2, of("fl oz", "7.5"), ["tank"]], [3, of("fl oz", "2"), ["tank"]]]);
    expect(findings.map(({ level, rule, about }) => [level, rule, about])).toEqual([["hold", "product-not-planned", ["Marker Dye"]]]);
    expect(usedOf(reallyUsed(spray, entered("meter", "0"), EVERYWHERE, at))).toMatchObject({ used: [{ line: 2 }], findings: [] });
    const planned = usedOf(reallyUsed(spray, entered("meter", "10"), EVERYWHERE, { ...at, isPlannedOn: (productId) => productId === "dye" }));
    expect(planned.findings.map(({ level, rule }) => [level, rule])).toEqual([["take-care", "product-beside-its-line"]]);
  });

  test("further lines of one draw come out by the same gallons, and a fill that only they name by its own", () => {
    const dye = { ...iron, line: 3, productId: "dye", productName: "Marker Dye", label: "not-on-file" } as const;
    const dyed: FillAtHand = { ...FILL, fillId: "dyed", number: 8, lots: [{ lotId: "dye-lot", amount: ounces("8") }], productOfLot: new Map([["dye-lot", "dye"]]) };
    const at = atHand({ fills: [FILL, dyed], together: { lines: [3], fills: [{ fillId: "dyed", amount: "5 gal", field: "mixes.3.alsoFrom.0" }] }, treatmentOf: (line) => (line === 3 ? dye : iron) });
    const { used, draws } = usedOf(reallyUsed(spray, entered("meter", "10"), EVERYWHERE, at));
    expect(used.map(({ line, total }) => [line, total])).toEqual([[2, of("fl oz", "7.5")], [3, of("fl oz", "1")]]);
    expect(draws.map(({ fill, sprayed }) => [fill.number, sprayed])).toEqual([[7, of("gal", 10n)], [8, of("gal", 5n)]]);
    const unsaid = { ...at, together: { lines: [3], fills: [{ fillId: "dyed", amount: "", field: "mixes.3.alsoFrom.0" }] } };
    expect(fieldsOf(reallyUsed(spray, entered("meter", "10"), EVERYWHERE, unsaid))).toEqual({ "mixes.3.alsoFrom.0.amount": "Say how many gallons came out of fill 8." });
  });
});

describe("what was sprayed out of two fills", () => {
  // 30 fl oz in 40 gal, of which 36 are gone; 24 fl oz in 40 gal.
  const first: FillAtHand = { ...FILL, drawn: of("gal", 36n) };
  const second: FillAtHand = { ...FILL, fillId: "second", number: 8, lots: [{ lotId: "iron-lot", amount: ounces("24") }] };
  const both = (measuredBy: MixEntered["measuredBy"], amount: string, more: string): MixEntered => ({ measuredBy, amount, fillId: "fill", alsoFrom: [{ row: "0", amount: more, fillId: "second" }] });
  const at = atHand({ fills: [first, second] });
  const drawsOf = (answer: ReturnType<typeof reallyUsed>) => usedOf(answer).draws.map(({ fill, sprayed }) => [fill.number, sprayed]);

  test("by the meter each has its own gallons", () => {
    const answer = reallyUsed(spray, both("meter", "3 gal", "1.5"), EVERYWHERE, at);
    expect(drawsOf(answer)).toEqual([[7, of("gal", 3n)], [8, of("gal", "1.5")]]);
    expect(totalsOf(answer)).toEqual([of("fl oz", "3.15")]);
    expect(fieldsOf(reallyUsed(spray, both("meter", "3 gal", ""), EVERYWHERE, at))).toEqual({ "mixes.2.alsoFrom.0.amount": "Say how many gallons came out of fill 8." });
    expect(fieldsOf(reallyUsed(spray, both("meter", "", "3 gal"), EVERYWHERE, at))).toEqual({ "mixes.2.amount": "Say how many gallons came out of fill 7." });
    expect(fieldsOf(reallyUsed(spray, both("meter", "3 gal", "3 lb"), EVERYWHERE, at))).toHaveProperty(["mixes.2.alsoFrom.0.amount"]);
  });

  test("as planned the first one is emptied before the next, for the lawns that were reached", () => {
    // 3,000 sq ft take 4.5 gal, of which the first fill has 4; the front lawn alone takes 3.
    expect(drawsOf(reallyUsed(spray, both("as-planned-not-measured", "", ""), EVERYWHERE, at))).toEqual([[7, of("gal", 4n)], [8, of("gal", "0.5")]]);
    expect(drawsOf(reallyUsed(spray, both("as-planned-not-measured", "", ""), new Set(["front"]), at))).toEqual([[7, of("gal", 3n)]]);
  });

  test("without a mix ticket the gallons of both must be said", () => {
    expect(fieldsOf(usedAsTyped(iron, both("as-planned-not-measured", "", ""), EVERYWHERE, at))).toEqual({ "mixes.2.amount": "No mix was planned here. Say how many gallons were sprayed." });
    expect(totalsOf(usedAsTyped(iron, both("meter", "4", "10"), EVERYWHERE, at))).toEqual([of("fl oz", "9")]);
  });
});

describe("without a mix ticket", () => {
  test("the amount as it was typed, or the planned rate on the lawns that were reached, says that no ticket was worked out", () => {
    const { used, findings } = usedOf(usedAsTyped(feed, entered("weight", "9"), EVERYWHERE, atHand()));
    expect(used.map(({ total, lots }) => [total, lots.length])).toEqual([[of("lb", "9"), 1]]);
    expect(findings.map(({ rule }) => rule)).toEqual(["mix-not-worked-out"]);
    expect(totalsOf(usedAsTyped(feed, AS_PLANNED, new Set(["front"]), atHand()))).toEqual([of("lb", "5")]);
    expect(totalsOf(usedAsTyped(iron, entered("meter", "12 fl oz"), EVERYWHERE, atHand()))).toEqual([of("fl oz", "12")]);
    expect(fieldsOf(usedAsTyped(iron, entered("meter", "12"), EVERYWHERE, atHand()))).toHaveProperty(["mixes.2.amount"]);
    expect(totalsOf(usedAsTyped(feed, entered("bags", "2 bags"), EVERYWHERE, atHand()))).toEqual([of("lb", "100")]);
  });

  test("a planned volume of what is counted by weight is asked for; nothing is guessed", () => {
    expect(fieldsOf(usedAsTyped({ ...iron, countedBy: "mass" }, AS_PLANNED, EVERYWHERE, atHand()))).toEqual({ "mixes.2.amount": "It is counted by weight. Say how much was used." });
    expect(fieldsOf(usedAsTyped(feed, entered("weight", "2 gal"), EVERYWHERE, atHand()))).toHaveProperty(["mixes.1.amount"]);
  });

  test("out of a fill the gallons must be said", () => {
    expect(fieldsOf(usedAsTyped(iron, AS_PLANNED, EVERYWHERE, atHand({ fills: [FILL] })))).toEqual({ "mixes.2.amount": "No mix was planned here. Say how many gallons were sprayed." });
    expect(totalsOf(usedAsTyped(iron, entered("meter", "20"), EVERYWHERE, atHand({ fills: [FILL] })))).toEqual([of("fl oz", "15")]);
  });
});

test("what is counted by another measure than it was used by is taken off no lot, and a count is asked for", () => {
  const { used, findings } = usedOf(reallyUsed(spread, AS_PLANNED, EVERYWHERE, atHand({ treatmentOf: () => ({ ...feed, countedBy: "volume" }) })));
  expect(used.map(({ lots }) => lots)).toEqual([[]]);
  expect(findings.map(({ rule, figure }) => [rule, figure])).toEqual([["count-it", "No lot of it is on file."]]);
});

describe("a tank that was measured after the visit", () => {
  const settled: FillAtHand = { ...FILL, fillRestId: "rest", drawn: of("gal", 10n), sources: [{ stockLocationId: "loss", upTo: of("gal", 4n) }, { stockLocationId: "count-difference", upTo: null }] };

  test("gives nothing more: it comes out of what was missing, and beyond that out of the next source", () => {
    // 30 fl oz in 40 gal: 4 gal are 3 fl oz, and 2 gal more are 1.5.
    const answer = usedOf(reallyUsed(spray, entered("meter", "6 gal"), EVERYWHERE, atHand({ fills: [settled] })));
    expect(answer.used).toMatchObject([{ total: of("fl oz", "4.5"), lots: [{ lotId: "iron-lot", from: "loss", amount: ounces("3") }, { lotId: "iron-lot", from: "count-difference", amount: ounces("1.5") }] }]);
    expect(answer.findings).toMatchObject([{ level: "note", rule: "fill-settled-since" }]);
    const within = usedOf(reallyUsed(spray, entered("meter", "3 gal"), EVERYWHERE, atHand({ fills: [settled] })));
    expect(within.used[0]?.lots).toEqual([{ lotId: "iron-lot", from: "loss", amount: ounces("2.25") }]);
  });
});
