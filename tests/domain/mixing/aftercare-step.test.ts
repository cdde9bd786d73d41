import { expect, test } from "vitest";
import { endAt, endOnState } from "#domain/mixing/aftercare-instants";
import { type AftercareReason, endWords, inReasonOrder, inTimeOrder, joinMayNots, type MayNot } from "#domain/mixing/aftercare-step";
import { at, CHICAGO, END, HOUR, START } from "../../support/aftercare-builders";

const reasonOf = (productName: string): AftercareReason => ({ productName, kind: "mowing-after", labelWords: "words", basis: "label", source: "label" });
const mayNot = (productName: string, fromHours: number, endHours: number | null, change: Partial<MayNot["end"]> = {}): MayNot => ({
  row: "mowing",
  startsAtEpochMilliseconds: START + fromHours * HOUR,
  end: { ...(endHours === null ? endOnState("dry") : endAt(START + endHours * HOUR)), ...change },
  movesWithWork: true,
  reason: reasonOf(productName),
});
const from = { epochMilliseconds: START, timeZone: CHICAGO };
const short = (mayNots: readonly MayNot[]) =>
  joinMayNots("mowing", mayNots, from).map((step) => [
    (step.startsAtEpochMilliseconds - START) / HOUR,
    step.endsAtEpochMilliseconds === null ? null : (step.endsAtEpochMilliseconds - START) / HOUR,
    step.isEstimate,
    step.reasons.map(({ productName }) => productName).join(" "),
  ]);

test("what overlaps or touches is one with the later end and every reason; the rest stays apart", () => {
  expect(short([mayNot("B", 0, 5), mayNot("A", 1, 3), mayNot("C", 5, 6), mayNot("D", 8, 9)])).toEqual([
    [0, 6, false, "A B C"],
    [8, 9, false, "D"],
  ]);
});

test("the end is an estimate where only an estimate is as late; one without a time leaves it open", () => {
  expect(short([mayNot("A", 0, 5), mayNot("B", 0, 2, { isEstimate: true })])).toEqual([[0, 5, false, "A B"]]);
  expect(short([mayNot("A", 0, 2), mayNot("B", 0, 5, { isEstimate: true })])).toEqual([[0, 5, true, "A B"]]);
  expect(short([mayNot("A", 0, 5), mayNot("B", 0, 5, { isEstimate: true })])).toEqual([[0, 5, false, "A B"]]);
  expect(short([mayNot("A", 0, null), mayNot("B", 4, 6)])).toEqual([[0, null, true, "A B"]]);
});

test("a stated time is said beside a state of the lawn, whichever comes first", () => {
  const said = (hours: number | null, ...stated: readonly number[]) => {
    const end = endOnState("dry", hours === null ? null : START + hours * HOUR);
    const [step] = joinMayNots("mowing", [{ ...mayNot("A", 0, null), end }, ...stated.map((statedHours) => mayNot("B", 0, statedHours))], from);
    return [step?.words, step?.endsAtWords, step?.notBeforeEpochMilliseconds, step?.isEstimate];
  };
  const both = "Do not mow until dry, and not before the time given.";
  expect(said(3, 72)).toEqual([both, "Monday, May 4, 2026, 3 pm", START + 72 * HOUR, false]);
  expect(said(3, 1)).toEqual([both, "about Friday, May 1, 2026, 6 pm, an estimate, and not before Friday, May 1, 2026, 4 pm", START + HOUR, true]);
  expect(said(null, 72, 1)).toEqual([both, "dry; no time can be given, and not before Monday, May 4, 2026, 3 pm", START + 72 * HOUR, true]);
  expect(said(3)).toEqual(["Do not mow until dry.", "about Friday, May 1, 2026, 6 pm, an estimate", undefined, true]);
});

test("a stated time that is over as the visit begins is not said beside the state that is still waited for", () => {
  const end = { ...endOnState("watered in"), notBeforeEpochMilliseconds: START };
  expect(joinMayNots("mowing", [{ ...mayNot("A", -5, null), end }], from)).toMatchObject([{ words: "Do not mow until watered in.", endsAtWords: "watered in; no time can be given" }]);
  const later = { ...end, notBeforeEpochMilliseconds: START + 60_000 };
  expect(joinMayNots("mowing", [{ ...mayNot("A", -5, null), end: later }], from)).toMatchObject([{ endsAtWords: "watered in; no time can be given, and not before Friday, May 1, 2026, 3:01 pm" }]);
});

test("where what moves with the work is joined with what does not, the latest stated time of the latter is kept", () => {
  const fixed = (endHours: number | null, change: Partial<MayNot["end"]> = {}): MayNot => ({ ...mayNot("Earlier", -5, endHours, change), movesWithWork: false });
  const keptOf = (...mayNots: readonly MayNot[]) => joinMayNots("mowing", mayNots, from).map(({ fixedEndEpochMilliseconds: kept }) => (kept === undefined ? undefined : (kept - START) / HOUR));
  expect(keptOf(mayNot("A", 0, 5), fixed(3), fixed(2))).toEqual([3]);
  expect(keptOf(mayNot("A", 0, 3), fixed(5))).toEqual([5]);
  expect(keptOf(mayNot("A", 0, 5), fixed(null, { notBeforeEpochMilliseconds: START + 2 * HOUR }))).toEqual([2]);
  // Nothing is kept where all moves or nothing does, and of what waits for a state alone or is over.
  expect(keptOf(mayNot("A", 0, 5), mayNot("B", 0, 3))).toEqual([undefined]);
  expect(keptOf(fixed(5), fixed(3))).toEqual([undefined]);
  expect(keptOf(mayNot("A", 0, 5), fixed(null))).toEqual([undefined]);
  expect(keptOf(mayNot("A", 0, 5), fixed(null, { notBeforeEpochMilliseconds: START }))).toEqual([undefined]);
});

test("what is over, of no length or of another row is left out", () => {
  expect(short([mayNot("A", -5, 0), mayNot("B", 1, 1), { ...mayNot("C", 0, 3), row: "sign" }])).toEqual([]);
});

test("what ends a moment after the given instant still runs, and what begins a moment after another ends is apart from it", () => {
  const moment = 1 / HOUR;
  expect(short([mayNot("A", -5, moment)])).toHaveLength(1);
  expect(short([mayNot("A", 0, 1), mayNot("B", 1 + moment, 2)])).toHaveLength(2);
});

test("watered in and dry says the dry and the watered in of others too, and nothing else", () => {
  const waitsFor = ["dry", "the dust has settled", "watered in", "watered in and dry"];
  expect(endWords({ ...endOnState(""), waitsFor }, CHICAGO)).toBe("the dust has settled and watered in and dry; no time can be given");
  expect(endWords({ ...endOnState(""), waitsFor: ["dry", "watered in"] }, CHICAGO)).toBe("dry and watered in; no time can be given");
});

test("words say what is waited for and mark an estimate", () => {
  const [step] = joinMayNots("mowing", [{ ...mayNot("A", 0, 3), end: endOnState("dry", START + 3 * HOUR) }], from);
  expect(step).toMatchObject({
    words: "Do not mow until dry.",
    startsAtWords: "Friday, May 1, 2026, 3 pm",
    endsAtWords: "about Friday, May 1, 2026, 6 pm, an estimate",
  });
  expect(endWords(endOnState("dry"), CHICAGO)).toBe("dry; no time can be given");
  expect(endWords(endAt(at("2026-05-02T04:00-05:00")), CHICAGO)).toBe("Saturday, May 2, 2026, 4 am");
});

test("reasons are in one order whatever the order of the products, each once", () => {
  expect(inReasonOrder([reasonOf("B"), reasonOf("A"), reasonOf("B")])).toEqual([reasonOf("A"), reasonOf("B")]);
});

test("steps are in order of time, then of rows, then the open end last", () => {
  const [mow] = joinMayNots("mowing", [mayNot("A", 0, null)], from);
  if (mow === undefined) throw new Error("one step is wanted");
  const people = { ...mow, row: "people-and-pets" as const };
  const early = { ...mow, startsAtEpochMilliseconds: START - 1 };
  const closed = { ...mow, endsAtEpochMilliseconds: END };
  expect(inTimeOrder([mow, closed, people, early])).toEqual([early, people, closed, mow]);
});
