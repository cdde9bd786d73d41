import { expect, test } from "vitest";
import { hold, note } from "#domain/foundation/finding";
import { answersOnPaper, findingsOnPaper, ticketOnPaper, type TicketToPrint } from "#domain/papers/ticket-on-paper";
import { lawnsWithoutEveryAmount } from "#domain/papers/mix-ticket-paper";
import { frameOf } from "../../support/sample-papers";
import { type TicketTreatment } from "#domain/mixing/ticket-question";
import { deliveredWorkings } from "#domain/mixing/ticket-working-delivered";
import { FEED as TICKET_FEED, IRON as TICKET_IRON, LAWN, QUESTION, ticketOf } from "../../support/ticket";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { type LabelAftercare } from "#domain/label/aftercare-constraint";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, FEED, hoursAfterEnd, IRON, labelOf, says } from "../../support/aftercare-builders";
import { valueOf } from "../../support/domain-answers";

const PRINT: TicketToPrint = {
  frame: frameOf("Mix ticket", "No. 1"), address: "4 Sorrel Lane, Millbrook", customer: "Avery Thorn", question: QUESTION, ticket: ticketOf(), findings: [], answers: [],
  aftercare: [], license: null, truck: null, lotOfProduct: new Map([["feed", "L-1"]]),
};

test("each lawn of each mix has an amount under its own product and none under others", () => {
  const paper = ticketOnPaper(PRINT);
  expect(lawnsWithoutEveryAmount(paper)).toEqual([]);
  expect(paper.lawns).toEqual([
    { name: "Front", treatedArea: "2,000 sq ft", mix: "dry", amounts: ["5 lb", "–"] },
    { name: "Front", treatedArea: "2,000 sq ft", mix: "3 gal", amounts: ["–", "3 fl oz"] },
  ]);
});

test("what is left of a tank has a row after its lawns", () => {
  // The 5 gal marks make 5 gal where 3 are taken, which all on 2,000 sq ft would be more than the iron's label wants; 1 fl oz is in each.
  const question = { ...QUESTION, settings: { ...QUESTION.settings, tankMark: exactly("gal", 5n) } };
  const paper = ticketOnPaper({ ...PRINT, question, ticket: ticketOf(question) });
  expect(lawnsWithoutEveryAmount(paper)).toEqual([]);
  expect(paper.lawns.slice(1)).toEqual([
    { name: "Front", treatedArea: "2,000 sq ft", mix: "3 gal", amounts: ["–", "3 fl oz"] },
    { name: "Left in the tank", treatedArea: "–", mix: "2 gal", amounts: ["–", "2 fl oz"] },
  ]);
});

test("an answer says who gave it, under which license, when by the company's clock, and why", () => {
  const given = { rule: "a", reason: "told", by: "Dana", license: "IN C-1", answeredAt: "2026-04-14T12:00:00.000Z" };
  expect(answersOnPaper([given], "America/New_York")).toEqual([{ rule: "a", answered: null, words: "Answered by Dana, license IN C-1, April 14, 2026, 8:00 am: told" }]);
});

test("what is not on file says so", () => {
  const paper = ticketOnPaper(PRINT);
  expect(paper.products.map(({ lot }) => lot)).toEqual(["L-1 (taken next)", "none on hand"]);
  expect(paper.visit[1]?.value).toEqual({ kind: "does-not-apply", because: "none on file that stands" });
  expect(paper.visit[2]?.value).toEqual({ kind: "does-not-apply", because: "on no truck’s day" });
});

test("nitrogen per 1,000 sq ft is that of the feed and the iron together", () => {
  // 5 lb of 32 % on 2,000 sq ft, and 3 fl oz of 11 lb per gal at 6 %: 0.8 + 0.0077 lb per 1,000 sq ft.
  expect(ticketOnPaper(PRINT).nutrients[0]).toMatchObject({ lawn: "Front", nutrient: "Nitrogen", delivered: "0.808 lb per 1,000 sq ft", limit: "none on file" });
});

test("a nutrient reads as on the screen, and that of spot work is what its spots get", () => {
  const nutrientsOf = (treatments: readonly TicketTreatment[]) => {
    const question = { ...QUESTION, treatments };
    const ticket = ticketOf(question);
    const words = deliveredWorkings(question, ticket).map((each) => `${each.words} per 1,000 sq ft`);
    const printed = ticketOnPaper({ ...PRINT, question, ticket }).nutrients.map(({ delivered }) => delivered);
    for (const delivered of printed) expect(words).toContain(delivered);
    return printed;
  };
  // Iron: 10% of 3 fl oz at 11 lb per gal on 2,000 sq ft.
  expect(nutrientsOf([TICKET_FEED, TICKET_IRON])).toEqual(["0.808 lb per 1,000 sq ft", "0.0129 lb per 1,000 sq ft"]);
  // ½ lb by the scale's marks on a tenth of 2,000 sq ft, 32% of it nitrogen.
  expect(nutrientsOf([{ ...TICKET_FEED, spot: { shareBasisPoints: 1000 } }])).toEqual(["0.8 lb per 1,000 sq ft"]);
});

test("nutrients are said over the ground that gets them, whatever another product leaves clear", () => {
  const clear = (treatment: TicketTreatment, feet: bigint) => ({ ...treatment, use: { ...treatment.use, distanceToWater: { withDeflector: of("ft", feet), otherwise: of("ft", feet), basis: "label", source: "label" } as const } });
  const lawns = [{ ...LAWN, area: of("sq ft", 10_000n), waterBeside: "yes" as const, waterEdges: [{ name: "the pond", length: of("ft", 200n), width: "unknown" as const }] }];
  const bare = { ...TICKET_IRON, label: { ...TICKET_IRON.label, analysis: "none" as const } };
  const nitrogen = (treatments: readonly TicketTreatment[]) => {
    const question = { ...QUESTION, lawns, treatments };
    return ticketOnPaper({ ...PRINT, question, ticket: ticketOf(question) }).nutrients.map(({ nutrient, delivered }) => `${nutrient} ${delivered}`);
  };
  // 2.5 lb of 32 % are 0.8 lb, whether the spray beside it keeps farther from the water or nearer to it.
  for (const feet of [3n, 15n, 40n]) expect(nitrogen([clear(TICKET_FEED, 15n), clear(bare, feet)])).toEqual(["Nitrogen 0.8 lb per 1,000 sq ft"]);
});

test("a date is printed where a label sets one, and none where none does", () => {
  const whenOf = (label: LabelAftercare) => {
    const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(label)])));
    return ticketOnPaper({ ...PRINT, aftercare: [{ lawnNames: ["Front"], timeline }] }).aftercare.filter(({ what }) => what.startsWith("Water in")).map(({ when }) => when);
  };
  const undated = labelOf("Slow", says("watering-in", { by: "not-stated", depth: { least: of("in", "0.25"), most: "none" }, rain: "counts" }));
  expect(whenOf(FEED)).toEqual(["From Friday, May 1, 2026, 4 pm, by Saturday, May 2, 2026, 4 pm"]);
  expect(whenOf(undated)).toEqual(["From Friday, May 1, 2026, 4 pm, when it suits; no date on the label"]);
});

test("leaf and soil as products want them, and rain that spoils, are printed in the label's words, with their lawns where those differ", () => {
  const timelineOf = (label: LabelAftercare) => valueOf(aftercareTimeline(aftercareQuestion([appliedOf(label)])));
  const soil = labelOf("Moistgrub", says("soil-at-application", { state: "moist" }));
  const [front, back] = [{ lawnNames: ["Front"], timeline: timelineOf(IRON) }, { lawnNames: ["Back"], timeline: timelineOf(soil) }];
  expect(ticketOnPaper({ ...PRINT, aftercare: [front] }).atApplication).toEqual([
    { words: "Ferrox Foliar wants a dry leaf when it goes down.", labelWords: "words on leaf-at-application" },
    { words: "Any rain before Saturday, May 2, 2026, 4 am spoils Ferrox Foliar.", labelWords: "words on rain-that-spoils" },
  ]);
  expect(ticketOnPaper({ ...PRINT, aftercare: [front, back] }).atApplication?.map(({ words }) => words)).toEqual([
    "Ferrox Foliar wants a dry leaf when it goes down (Front).",
    "Any rain before Saturday, May 2, 2026, 4 am spoils Ferrox Foliar (Front).",
    "Moistgrub wants moist soil when it goes down (Back).",
  ]);
});

test("an answered hold of law carries its answer, another hold does not, and what only says that all is well is left out", () => {
  const law = hold("license-holder", { rule: "a-law", source: "law", what: "Not here.", about: [] });
  const office = hold("office", { rule: "a-law", source: "house", what: "Not so.", about: [] });
  const fine = note({ rule: "calibration-current", source: "house", what: "Calibrated.", about: [] });
  const lines = findingsOnPaper([law, office, fine], [{ rule: "a-law", words: "Answered by Rowan Ash." }]);
  expect(lines.map(({ level, words }) => `${level}: ${words}`)).toEqual(["answered: Not here. Answered by Rowan Ash.", "hold: Not so."]);
});

test("what is done afterward says by which product's words, and names no product twice", () => {
  const mowing = (source: string) => labelOf("Evenfeed 18", says("mowing-after", { untilLaterOf: [hoursAfterEnd(24)] }, { basis: "label", source }));
  const because = (source: string) => {
    const timeline = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(mowing(source))])));
    return ticketOnPaper({ ...PRINT, aftercare: [{ lawnNames: ["Front"], timeline }] }).aftercare.map((line) => line.because);
  };
  expect(because("label, directions for use")).toEqual(["Evenfeed 18: label, directions for use"]);
  expect(because("label of Evenfeed 18, Established lawns")).toEqual(["label of Evenfeed 18, Established lawns"]);
});
