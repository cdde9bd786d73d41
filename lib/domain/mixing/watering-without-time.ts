import { listWords } from "#domain/foundation/list-words";
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AftercareStep, inReasonOrder, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName } from "#domain/mixing/applied-product";
import { depthWords } from "#domain/mixing/irrigation-run";
import { localWords } from "#domain/mixing/local-words";
import { type StaysDry, untilAllIsDown, type WateringNeed, wateringNeeds } from "#domain/mixing/watering-bounds";
import { commonDepth } from "#domain/mixing/watering-depth";
import { byHandSteps } from "#domain/mixing/watering-by-hand";
import { authoritiesOfHours } from "#domain/mixing/watering-hours";
import { alsoWatersSentence, alsoWetsSentence } from "#domain/mixing/watering-shared";
import { type JudgedWatering } from "#domain/mixing/watering-window";

type Watering = Pick<JudgedWatering, "answer" | "dry" | "lostToOthers" | "shared" | "byHand">;

/**
 * What is told of water that is wanted and for which no time was found, or none can be: the work may be done all the same,
 * and who is told nothing takes it that nothing is to be done. It has no hours; the words say by when a label wants it, and
 * what is not on file. Where there is a time, it is what other work wants that can't be given in it; nothing where nothing
 * wants water. A lawn that shares stations with others
 * is watered under all that they ask for together, and its step says which stations those are. Where only a
 * controller is in the way, it has the times in which it may be done by hand.
 */
export function wateringWithoutTime(question: AftercareQuestion, watering: Watering): readonly AftercareStep[] {
  const { answer, dry: ownDry, shared, byHand } = watering;
  if (answer.kind === "none-needed") return [];
  if (answer.kind === "window") return lostSteps(question, watering);
  const { visit, timeZone } = question;
  const { products = question.products, dry = ownDry } = shared ?? {};
  const { needs: ownNeeds, unsaid, unread } = wantedBy(question);
  if (ownNeeds.length + unsaid.length + unread.length === 0) return [];
  if (byHand !== undefined) return [...byHandSteps(byHand.answer, timeZone), ...lostSteps(question, { ...watering, ...byHand })];
  const needs = ownNeeds.length === 0 ? [] : wateringNeeds(products, visit, timeZone);
  const downAt = untilAllIsDown(visit, products).untilEpochMilliseconds;
  const isOpen = answer.kind === "undecided";
  const { epochMilliseconds, isEstimate, words } = isOpen ? openStart(downAt, dry) : startOf(downAt, dry, timeZone);
  const stillDry = isOpen ? [] : dry.filter(({ end }) => (end.atEpochMilliseconds ?? 0) > downAt);
  return [
    {
      row: "watering",
      kind: "must",
      startsAtEpochMilliseconds: epochMilliseconds,
      endsAtEpochMilliseconds: null,
      isEstimate,
      words: [
        ...(isOpen ? ["Do not water until the company says so: not all that it hangs on is on file."] : []),
        ...(needs.length === 0 ? [] : isOpen ? [`Then w${wantedWords(needs, question)}`] : [`W${wantedWords(needs, question)}`, noTimeWords(question)]),
        ...(shared?.alsoWaters.map(alsoWatersSentence) ?? []),
        ...(shared?.alsoWets.map(alsoWetsSentence) ?? []),
        ...unsaid.map(({ applied }) => `It is not on file whether ${appliedName(applied, timeZone)} has been watered in; if it has not, it still wants water.`),
        ...(unread.length === 0 ? [] : [`Whether ${namesOf(unread, timeZone)} must be watered in has not been entered from the label.`]),
      ].join(" "),
      startsAtWords: words,
      endsAtWords: byWords([...needs, ...unsaid], question),
      reasons: inReasonOrder([
        ...[...needs, ...unsaid, ...stillDry].map(({ applied, constraint }) => reasonFor(appliedName(applied, timeZone), constraint)),
        ...unread.map((applied) => ({ productName: appliedName(applied, timeZone), kind: "watering-in", labelWords: "", basis: "label", source: "label, not read" }) as const),
      ]),
    },
  ];
}

/** What other work still wants that can't be given in the time that was found for the rest: no depth is told to be given. */
function lostSteps(question: AftercareQuestion, { dry: ownDry, shared, lostToOthers }: Watering): readonly AftercareStep[] {
  const { visit, timeZone, unitSystem } = question;
  const { products = question.products, dry = ownDry } = shared ?? {};
  const lost = lostToOthers.flatMap(({ applied, of }) => (of === "water" ? [applied] : []));
  const downAt = untilAllIsDown(visit, products).untilEpochMilliseconds;
  const { epochMilliseconds, isEstimate, words } = startOf(downAt, dry, timeZone);
  return wateringNeeds(lost, visit, timeZone).map((need) => {
    const { applied, constraint } = need;
    const wants = constraint.depth === "not-stated" ? "water" : `${depthWords(constraint.depth.least, unitSystem)} of water`;
    return {
      row: "watering",
      kind: "must",
      startsAtEpochMilliseconds: epochMilliseconds,
      endsAtEpochMilliseconds: null,
      isEstimate,
      hasNoHours: true,
      words: `${appliedName(applied, timeZone)} still wants ${wants}, for which no time was found with the other water. Ask the company how to give it.`,
      startsAtWords: words,
      endsAtWords: byWords([need], question),
      reasons: [reasonFor(appliedName(applied, timeZone), constraint)],
    };
  });
}

/** What wants water, what still does if nobody has given it any, and of what nobody has read whether it does. */
function wantedBy({ products, visit, timeZone }: AftercareQuestion) {
  const unsaid = products.flatMap((applied) => (applied.wateredInAtEpochMilliseconds === "unknown" ? [{ ...applied, wateredInAtEpochMilliseconds: "not-yet" } as const] : []));
  return {
    needs: wateringNeeds(products, visit, timeZone),
    unsaid: wateringNeeds(unsaid, visit, timeZone),
    unread: products.filter(({ label, wateredInAtEpochMilliseconds: at }) => label.facts["watering-in"] === "unknown" && typeof at !== "number"),
  };
}

/** Where a fact is missing nobody can say from when on water does no harm: it waits for the company's word, at least as long as is known. */
function openStart(downAt: number, dry: readonly StaysDry[]) {
  return { epochMilliseconds: lastOf(downAt, dry), isEstimate: true, words: "when the company says so" };
}

function lastOf(downAt: number, dry: readonly StaysDry[]): number {
  return Math.max(downAt, ...dry.flatMap(({ end }) => end.atEpochMilliseconds ?? []));
}

/** From when on water is not forbidden any more. */
function startOf(downAt: number, dry: readonly StaysDry[], timeZone: string) {
  const epochMilliseconds = lastOf(downAt, dry);
  const last = dry.filter(({ end }) => end.atEpochMilliseconds === epochMilliseconds);
  const isEstimate = last.length > 0 && last.every(({ end }) => end.isEstimate);
  const words = localWords(epochMilliseconds, timeZone, "end");
  return { epochMilliseconds, isEstimate, words: isEstimate ? `about ${words}, an estimate` : words };
}

function namesOf(products: readonly AppliedProduct[], timeZone: string): string {
  return listWords([...new Set(products.map((applied) => appliedName(applied, timeZone)))]);
}

/** What is wanted, without the first letter, so that it may stand alone or after another word. */
function wantedWords(needs: readonly WateringNeed[], question: AftercareQuestion): string {
  const common = commonDepth(needs, question);
  switch (common.kind) {
    case "depth":
      return `ater in with ${depthWords(common.depth.least, question.unitSystem)}.`;
    case "not-stated":
      return "ater in as the label says; it states no depth.";
    case "no-common-depth":
      return "ater in; the labels do not agree on how much.";
  }
}

function noTimeWords({ hours }: AftercareQuestion): string {
  const byHours = authoritiesOfHours(hours).length > 0 ? ["the watering hours"] : [];
  return `No time was found that keeps to ${listWords(["the labels", ...byHours, "what the stations need"])}.`;
}

/** "as soon as the watering hours allow; the label wants it by Tuesday, Jul 7, 2026, 4 pm". */
function byWords(needs: readonly WateringNeed[], { hours, timeZone }: AftercareQuestion): string {
  const dues = needs.flatMap(({ dueAtEpochMilliseconds: due }) => due ?? []);
  const lead = authoritiesOfHours(hours).length > 0 ? "as soon as the watering hours allow" : "as soon as it may be";
  if (dues.length > 0) return `${lead}; the label wants it by ${localWords(Math.min(...dues), timeZone, "due")}`;
  if (needs.some(({ isOverdue }) => isOverdue)) return `${lead}; the date on the label has passed`;
  return needs.length === 0 ? "once the label has been read" : `${lead}; no date on the label`;
}
