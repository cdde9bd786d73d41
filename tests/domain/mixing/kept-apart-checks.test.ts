import { describe, expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type KeptApart, type LabelUse } from "#domain/label/label-facts";
import { percentByWeight } from "#domain/quantities/active-ingredient";
import { rateOf } from "#domain/quantities/rate";
import { checkKeptApart } from "#domain/mixing/kept-apart-checks";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { type PastApplication, type TicketTreatment } from "#domain/mixing/ticket-question";
import { BARRIER, FEED, IRON, LAWN, PAST, QUESTION, SPRAYER } from "../../support/ticket";

const apart = (treatment: TicketTreatment, keptApart: LabelUse["keptApart"]): TicketTreatment => ({ ...treatment, use: { ...treatment.use, keptApart } });
const from = (...list: readonly KeptApart[]): LabelUse["keptApart"] => ({ from: list, basis: "label", source: "a label" });
const WEED: TicketTreatment = { ...IRON, line: 4, productId: "weed", label: { ...IRON.label, productName: "Dandeloss", analysis: "none" } };
const findings = (treatments: readonly TicketTreatment[], history: readonly PastApplication[] = []) => checkKeptApart({ ...QUESTION, lawns: [{ ...LAWN, history }], treatments });
const said = (...args: Parameters<typeof findings>) => findings(...args).map(({ level, rule }) => `${level} ${rule}`);
const pastLabel = ({ label, use }: TicketTreatment): PastApplication["label"] => ({ ...label, serviceTypes: [use.serviceType] });
const earlier = (on: string, productName: string, more: Partial<PastApplication> = {}): PastApplication => ({ ...PAST, on: on as CalendarDate, productName, ...more });

test("a product that its label keeps out of a tank with another holds, and nobody may answer", () => {
  const weed = apart(WEED, from({ from: "iron", apart: "tank" }));
  expect(findings([weed, IRON])).toMatchObject([{ level: "hold", answerableBy: "nobody", rule: "not-in-one-tank", about: ["Dandeloss", "Rustwater Iron"] }]);
  expect(said([apart(WEED, from({ from: "all others", apart: "tank" })), IRON])).toEqual(["hold not-in-one-tank"]);
  expect(said([apart(WEED, from({ from: "lime", apart: "tank" })), IRON])).toEqual([]);
});

test("another machine, output or lawn is another tank, and what is spread is in none", () => {
  const weed = apart(WEED, from({ from: "all others", apart: "tank" }));
  expect(said([weed, { ...IRON, gear: { ...SPRAYER, equipmentId: "another" } }])).toEqual([]);
  expect(said([weed, { ...IRON, gear: { ...SPRAYER, carrier: { ...SPRAYER.carrier, rate: rateOf("carrier-volume-per-area", "2", "gal per 1,000 sq ft") } } }])).toEqual([]);
  expect(said([weed, { ...IRON, zoneIds: ["back"] }])).toEqual([]);
  expect(said([weed, FEED])).toEqual([]);
});

test("what nobody has read of it holds where products share a tank, or a lawn on one day, once", () => {
  expect(said([apart(WEED, "unknown"), IRON])).toEqual(["hold tank-partners-not-read"]);
  expect(said([apart(WEED, "unknown")])).toEqual([]);
  expect(findings([apart(FEED, "unknown"), IRON, WEED])).toMatchObject([
    { level: "hold", answerableBy: "office", rule: "day-partners-not-read", figure: "It shares a lawn on one day with Rustwater Iron and Dandeloss.", about: ["Harrowgate 32"] },
  ]);
  expect(said([apart(WEED, "unknown"), IRON, FEED])).toEqual(["hold tank-partners-not-read", "hold day-partners-not-read"]);
  expect(said([apart(FEED, "unknown"), { ...IRON, zoneIds: ["back"] }])).toEqual([]);
  expect(said([apart(FEED, "unknown"), { ...FEED, line: 9 }])).toEqual([]);
});

test("a product whose ingredients nobody entered may be the one that is meant, and holds", () => {
  const unread = { ...IRON, label: { ...IRON.label, activeIngredients: "unknown" } } as const;
  const tank = from({ from: "lime", apart: "tank" });
  expect(findings([apart(WEED, tank), unread])).toMatchObject([
    { level: "hold", answerableBy: "office", rule: "kept-apart-undecided", figure: "Its label keeps it apart from lime in one tank, and the active ingredients of Rustwater Iron are not on file." },
  ]);
  expect(said([apart(WEED, from({ from: "lime", apart: "tank" }, { from: "iron", apart: "tank" })), unread])).toEqual(["hold not-in-one-tank"]);
  expect(findings([apart(BARRIER, from({ from: "lime", apart: { days: 1 } })), unread])).toMatchObject([
    { rule: "kept-apart-undecided", figure: "Its label keeps it apart from lime by 1 day, and the active ingredients of Rustwater Iron are not on file.", about: ["Barrier Nine", "Rustwater Iron"] },
  ]);
});

test("so may one of the lawn's history, and only within the days", () => {
  const barrier = apart(BARRIER, from({ from: "lime", apart: { days: 14 } }));
  expect(findings([barrier], [earlier("2026-04-10", "Otherwise 5", { activeIngredients: "unknown" })])).toMatchObject([{ answerableBy: "office", rule: "kept-apart-undecided", about: ["Barrier Nine", "Otherwise 5"] }]);
  expect(said([barrier], [earlier("2026-03-31", "Otherwise 5", { activeIngredients: "unknown" })])).toEqual([]);
  expect(said([barrier], [earlier("2026-04-10", "Otherwise 5", { activeIngredients: "unknown" }), earlier("2026-04-09", "Fieldrow Lime")])).toEqual(["hold too-near-another-product", "hold kept-apart-undecided"]);
});

test("names are met in whole words, and iron by a guarantee of iron too", () => {
  const barrier = apart(BARRIER, from({ from: "iron", apart: { days: 7 } }));
  const named = (productName: string, more: Partial<TicketTreatment["label"]> = {}): TicketTreatment => ({ ...FEED, label: { ...FEED.label, productName, ...more } });
  expect(said([barrier, named("Environ Feed")])).toEqual([]);
  expect(said([barrier, named("Fieldrow Iron")])).toEqual(["hold not-on-one-day"]);
  expect(said([barrier, named("Environ Feed", { analysis: IRON.label.analysis })])).toEqual(["hold not-on-one-day"]);
  expect(said([barrier], [earlier("2026-04-10", "Environ Feed", { label: pastLabel(IRON) })])).toEqual(["hold too-near-another-product"]);
  expect(said([barrier], [earlier("2026-04-10", "Environ Feed")])).toEqual([]);
});

test("an analysis that nobody has read leaves iron undecided, in a tank, on one day and in the lawn's history", () => {
  const unread = { ...IRON, label: { ...IRON.label, productName: "Environ Feed", analysis: "unknown" } } as const;
  const figure = (where: string) => `Its label keeps it apart from iron ${where}, and the analysis of Environ Feed is not on file.`;
  expect(findings([apart(WEED, from({ from: "iron", apart: "tank" })), unread])).toMatchObject([{ level: "hold", answerableBy: "office", rule: "kept-apart-undecided", figure: figure("in one tank") }]);
  const barrier = apart(BARRIER, from({ from: "iron", apart: { days: 7 } }));
  expect(findings([barrier, unread])).toMatchObject([{ rule: "kept-apart-undecided", figure: figure("by 7 days") }]);
  expect(findings([barrier], [earlier("2026-04-10", "Environ Feed", { label: pastLabel(unread) })])).toMatchObject([{ rule: "kept-apart-undecided", figure: figure("by 7 days") }]);
  expect(said([barrier], [earlier("2026-04-10", "Environ Feed", { label: "unknown", putDownAs: [] })])).toEqual(["hold kept-apart-undecided"]);
});

test("iron that was put down is met by its grade, although no density is on file to count it by", () => {
  const barrier = apart(BARRIER, from({ from: "iron", apart: { days: 7 } }));
  const nutrients = nutrientRatesOf({ ...IRON.label, density: "unknown" }, IRON.rate);
  expect(nutrients.ok).toBe(false);
  expect(said([barrier], [earlier("2026-04-10", "Environ Feed", { nutrients, label: pastLabel(IRON) })])).toEqual(["hold too-near-another-product"]);
});

describe("what the label of an earlier product keeps apart", () => {
  const kept = (days: number, what = "iron", useName = "Lawns") => ({ useName, keptApart: from({ from: what, apart: { days } }) });
  const before = (on: string, ...putDownAs: PastApplication["putDownAs"]) => earlier(on, "Dandeloss", { productId: "weed", putDownAs });

  test("holds the later one just so, within the days, and nobody may answer", () => {
    expect(findings([IRON], [before("2026-04-10", kept(14))])).toMatchObject([
      {
        ...{ level: "hold", answerableBy: "nobody", rule: "too-near-another-product", source: "label", citation: "label of Dandeloss, Lawns", about: ["Rustwater Iron", "Front"] },
        what: "Rustwater Iron comes too near Dandeloss on Front.",
        figure: "4 days lie between them; the label of Dandeloss keeps that apart from iron by 14 days.",
      },
    ]);
    expect(said([IRON], [before("2026-04-10", kept(4))])).toEqual([]);
    expect(said([IRON], [before("2026-04-14", kept(1))])).toEqual(["hold not-on-one-day"]);
    expect(said([FEED], [before("2026-04-10", kept(14))])).toEqual([]);
    expect(said([{ ...IRON, productId: "weed" }], [before("2026-04-10", kept(14))])).toEqual([]);
    expect(said([IRON], [before("2026-04-10", { useName: "Lawns", keptApart: from({ from: "iron", apart: "tank" }) })])).toEqual([]);
  });

  test("the nearest time that surely says so is told, once for a product", () => {
    const history = [before("2026-04-10", kept(14, "urea")), before("2026-04-05", kept(14)), before("2026-04-02", kept(14))];
    expect(findings([IRON], history).map(({ figure }) => figure)).toEqual(["9 days lie between them; the label of Dandeloss keeps that apart from iron by 14 days."]);
    expect(said([IRON], history.slice(0, 1))).toEqual(["hold kept-apart-undecided"]);
  });

  test("where its use is not known, what only some of its uses say is undecided, and what all say holds", () => {
    const none = { useName: "Spots", keptApart: "none" } as const;
    expect(findings([IRON], [before("2026-04-10", kept(14), none)])).toMatchObject([
      { answerableBy: "office", rule: "kept-apart-undecided", figure: "Its label keeps it apart from iron by 14 days, and under which use of its label Dandeloss was put down is not on file." },
    ]);
    expect(said([IRON], [before("2026-04-10", kept(14), kept(7, "all others", "Spots"))])).toEqual(["hold too-near-another-product"]);
  });

  test("what nobody has read of it holds on one day, and so does what nobody has read of the later one", () => {
    const unread = { useName: "Lawns", keptApart: "unknown" } as const;
    expect(findings([IRON, FEED], [before("2026-04-14", unread)])).toMatchObject([{ answerableBy: "office", rule: "day-partners-not-read", about: ["Dandeloss"], figure: "It shares a lawn on one day with Rustwater Iron and Harrowgate 32." }]);
    expect(said([IRON], [earlier("2026-04-14", "Dandeloss", { putDownAs: [] })])).toEqual(["hold day-partners-not-read"]);
    expect(said([IRON], [before("2026-04-13", unread)])).toEqual([]);
    expect(findings([apart(FEED, "unknown")], [before("2026-04-14", { ...unread, keptApart: "none" })])).toMatchObject([{ rule: "day-partners-not-read", about: ["Harrowgate 32"], figure: "It shares a lawn on one day with Dandeloss." }]);
    expect(said([apart(FEED, "unknown")], [before("2026-04-13", { ...unread, keptApart: "none" })])).toEqual([]);
  });
});

test("classes of products are met in a tank and on the ground", () => {
  const weed = (what: string) => apart(WEED, from({ from: what, apart: "tank" }, { from: what, apart: { days: 7 } }));
  const kelp = { ...IRON, label: { ...IRON.label, analysis: "none" } } as const;
  expect(said([weed("Liquid fertilizer"), IRON])).toEqual(["hold not-in-one-tank", "hold not-on-one-day"]);
  expect(said([weed("Liquid fertilizer"), kelp])).toEqual([]);
  expect(said([weed("Other herbicides"), { ...BARRIER, zoneIds: ["front"] }])).toEqual(["hold not-on-one-day"]);
  expect(said([weed("any other product"), kelp])).toEqual(["hold not-in-one-tank", "hold not-on-one-day"]);
  expect(said([weed("herbicides")], [earlier("2026-04-10", "Otherwise 5", { serviceType: "grassy weed control" })])).toEqual(["hold too-near-another-product"]);
  expect(said([weed("alkaline materials"), kelp])).toEqual(["hold kept-apart-undecided", "hold kept-apart-undecided"]);
});

test("two that are kept apart by days don't go down on one lawn on one day", () => {
  const barrier = apart(BARRIER, from({ from: "Harrowgate", apart: { days: 7 } }));
  expect(said([barrier, FEED])).toEqual(["hold not-on-one-day"]);
  expect(said([barrier, { ...FEED, zoneIds: ["back"] }])).toEqual([]);
});

test("days are counted over the lawn's history, before and after, by name or ingredient; the nearest is told", () => {
  const barrier = apart(BARRIER, from({ from: "lime", apart: { days: 14 } }));
  expect(said([barrier], [earlier("2026-04-01", "Fieldrow Lime")])).toEqual(["hold too-near-another-product"]);
  expect(said([barrier], [earlier("2026-03-31", "Fieldrow Lime")])).toEqual([]);
  expect(said([barrier], [earlier("2026-04-27", "Fieldrow Lime")])).toEqual(["hold too-near-another-product"]);
  expect(said([barrier], [earlier("2026-04-27", "Fieldrow Lime", { productId: "barrier" })])).toEqual([]);
  const rate = rateOf("active-ingredient-mass-per-area", "1", "lb per acre");
  expect(said([barrier], [earlier("2026-04-10", "Otherwise 5", { activeIngredients: [{ name: "Lime sulfur", rate, modeOfAction: "none" }] })])).toEqual(["hold too-near-another-product"]);
  expect(findings([barrier], [earlier("2026-04-01", "Fieldrow Lime"), earlier("2026-04-10", "Fieldrow Lime"), earlier("2026-04-02", "Fieldrow Lime")])[0]?.figure).toBe(
    "4 days lie between them; the label keeps it apart from lime by 14 days.",
  );
  expect(findings([barrier], [earlier("2026-04-13", "Fieldrow Lime")])[0]?.figure).toBe("1 day lies between them; the label keeps it apart from lime by 14 days.");
});

test("a salt is met by the name of its acid too, in a tank, on one day and in the lawn's history; another acid is not", () => {
  const name = "Dimethylamine salt of ferrolinic acid";
  const salt = (acid: string): TicketTreatment => {
    const active = { name, concentration: percentByWeight("46"), acid: { name: acid, equivalent: percentByWeight("38") }, modeOfAction: "unknown" } as const;
    return { ...WEED, label: { ...WEED.label, activeIngredients: [active] } };
  };
  const inTank = apart(IRON, from({ from: "3,5-F", apart: "tank" }));
  const byDays = apart(IRON, from({ from: "3,5-F", apart: { days: 14 } }));
  expect(said([inTank, salt("3,5-F")])).toEqual(["hold not-in-one-tank"]);
  expect(said([inTank, salt("3,5-FB")])).toEqual([]);
  expect(said([byDays, salt("3,5-F")])).toEqual(["hold not-on-one-day"]);
  expect(said([byDays, salt("3,5-FB")])).toEqual([]);
  const rate = rateOf("active-ingredient-mass-per-area", "1", "lb per acre");
  const before = (acid: string) => earlier("2026-04-10", "Dandeloss", { activeIngredients: [{ name, rate, acid: { name: acid, rate }, modeOfAction: "unknown" }] });
  expect(said([byDays], [before("3,5-F")])).toEqual(["hold too-near-another-product"]);
  expect(said([byDays], [before("3,5-FB")])).toEqual([]);
});
