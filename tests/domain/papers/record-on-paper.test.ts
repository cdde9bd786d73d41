import { expect, test } from "vitest";
import { answeredHold } from "#domain/foundation/answered-hold";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { hold } from "#domain/foundation/finding";
import { recordOnPaper, type RecordInRegister } from "#domain/papers/record-on-paper";
import { CONTENT, FEED_TREATMENT } from "../../support/recorded";

const RECORD: RecordInRegister = {
  number: 7, content: CONTENT, writtenAtEpochMilliseconds: Date.parse("2026-04-14T13:16:00Z"), writtenBy: "Dana Quill", hash: "ab", previousHash: "cd", isUnaltered: true, amendments: [],
};
const paperOf = (content: Partial<typeof CONTENT> = {}, more: Partial<RecordInRegister> = {}) => recordOnPaper({ ...RECORD, ...more, content: { ...CONTENT, ...content } }, false);

test("says what happened in a sentence, in the site's own time", () => {
  const { readBack, frame } = paperOf();
  expect(readBack).toBe("Dana Quill put down 5 lb of Harrowgate 32 on Front, 8:50 am to 9:09 am on April 14, 2026. The sign was put up; no notice was left.");
  expect(frame).toMatchObject({ number: "No. 7", source: "From record 7 as written by Dana Quill, April 14, 2026, 9:16 am" });
});

test("an amount that nobody measured says so, and a measured one how", () => {
  expect(paperOf().products[0]?.amount).toEqual({ kind: "measured", text: "5 lb", by: "weight" });
  expect(paperOf({ treatments: [{ ...FEED_TREATMENT, measuredBy: "as-planned-not-measured" }] }).products[0]?.amount).toEqual({ kind: "as-planned", text: "5 lb" });
});

test("a spray out of two fills names both, each with what came out of it and where it was mixed", () => {
  const fill = (number: number, gallons: string, mixingPlace: string) => ({ fillId: String(number), number, sprayed: { dimension: "volume", amount: "1", words: `${gallons} gal` }, mixingPlace }) as const;
  const iron = { ...FEED_TREATMENT, formulation: "soluble liquid", fill: fill(3, "100", "Shop yard") } as const;
  const said = (treatment: typeof FEED_TREATMENT) => {
    const { products, elements } = paperOf({ treatments: [treatment] });
    return [products[0]?.elements.fill, elements.totalMix, elements.mixingPlace].map((value) => (value?.kind === "said" ? value.text : value?.kind));
  };
  expect(said(iron)).toEqual(["Fill 3, 100 gal of it", "100 gal of fill 3", "Shop yard"]);
  expect(said({ ...iron, furtherFills: [fill(4, "50", "12 Alder Court")] })).toEqual(["Fill 3, 100 gal of it; Fill 4, 50 gal of it", "100 gal of fill 3, 50 gal of fill 4", "Shop yard, 12 Alder Court"]);
});

test("ground is counted once whatever went on it, and weather that was not taken says so", () => {
  const { elements } = paperOf({ treatments: [FEED_TREATMENT, { ...FEED_TREATMENT, line: 2 }] });
  expect(elements.area).toEqual({ kind: "said", text: "2,000 sq ft" });
  expect(elements.windSpeed).toEqual({ kind: "not-taken" });
  expect(elements.businessAddress).toEqual({ kind: "not-recorded" });
});

test("a technician stands as the noncertified person; a record without a signature leaves a line to sign", () => {
  const license = { kind: "registered-technician", state: "IN", number: "T-1", category: "3b", expiresOn: CONTENT.applicator.license?.expiresOn ?? ("" as never) };
  const paper = paperOf({ applicator: { ...CONTENT.applicator, license } });
  expect(paper.elements.noncertifiedName).toEqual({ kind: "said", text: "Dana Quill" });
  expect(paperOf().elements.noncertifiedName).toMatchObject({ kind: "does-not-apply" });
  expect(paper.signature).toEqual({ kind: "to-write" });
});

test("a hash that does not fit is a hold on the paper, and answered holds carry their answers", () => {
  expect(paperOf({}, { isUnaltered: false }).findings[0]).toMatchObject({ level: "hold" });
  const law = hold("license-holder", { rule: "a-law", source: "law", what: "Not here.", about: [] });
  const answered = paperOf({ findings: [law], holdAnswers: [{ rule: "a-law", reason: "the neighbor was told", by: "Dana Quill", license: "IN C-1", answeredAt: "2026-04-14T12:00:00.000Z" }] });
  expect(answered.findings[0]).toMatchObject({ level: "answered", words: "Not here. Answered by Dana Quill, license IN C-1, April 14, 2026, 8:00 am: the neighbor was told" });
  const [first, second] = [hold("license-holder", { rule: "a-law", source: "law", what: "Not on Front.", about: [] }), hold("license-holder", { rule: "a-law", source: "law", what: "Not on Back.", about: [] })];
  const to = answeredHold(first, "2026-04-14" as CalendarDate);
  const oneOfTwo = paperOf({ findings: [first, second], holdAnswers: [{ rule: "a-law", answered: to, reason: "the neighbor was told", by: "Dana Quill", license: "IN C-1", answeredAt: "2026-04-14T12:00:00.000Z" }] });
  expect(oneOfTwo.findings.map(({ level }) => level)).toEqual(["answered", "hold"]);
});
