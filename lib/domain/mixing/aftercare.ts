import { addDays, type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type Finding, gravestFirst } from "#domain/foundation/finding";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AftercareKind } from "#domain/label/aftercare-constraint";
import { type EndContext, endOf, endOnState } from "#domain/mixing/aftercare-instants";
import { type AftercareQuestion, refuseImpossibleQuestion } from "#domain/mixing/aftercare-question";
import {
  AFTERCARE_ROWS,
  type AftercareRowName,
  type AftercareStep,
  inTimeOrder,
  joinMayNots,
  type MayNot,
  reasonFor,
} from "#domain/mixing/aftercare-step";
import { type AppliedProduct, appliedName, constraintsOf, isOfOtherWork } from "#domain/mixing/applied-product";
import { crewWhilePeopleStayOff } from "#domain/mixing/crew-entry";
import { type LawnAtApplication, lawnAtApplication } from "#domain/mixing/lawn-at-application";
import { dateWords } from "#domain/mixing/local-words";
import { mowedTooShortlyBefore, mowingDaysInTheWay } from "#domain/mixing/mowing-aftercare";
import { type SpoilingRain, spoilingRain } from "#domain/mixing/rain-aftercare";
import { seedingFindings, seedingMayNots } from "#domain/mixing/seeding-aftercare";
import { signMayNots, signsToPutUp } from "#domain/mixing/sign-aftercare";
import { unreadFindings } from "#domain/mixing/unread-facts";
import { type StaysDry, wateredInAtLatest } from "#domain/mixing/watering-bounds";
import { judgeWithByHand } from "#domain/mixing/watering-by-hand";
import { wateringSteps } from "#domain/mixing/watering-steps";
import { wateringWithoutTime } from "#domain/mixing/watering-without-time";
import { type JudgedWatering, type WateringAnswer } from "#domain/mixing/watering-window";

/**
 * What to do and not to do on one zone after a visit, as it is kept with a mix ticket: text, numbers, lists and null
 * only, so that it is stored and read back as it is.
 */
export interface AftercareTimeline {
  readonly timeZone: string;
  readonly zoneDataVersion: string;
  readonly visitEndsAtEpochMilliseconds: number;
  /** In order of time. Within a row what is forbidden does not overlap. */
  readonly steps: readonly AftercareStep[];
  readonly watering: WateringAnswer;
  readonly lawnAtApplication: readonly LawnAtApplication[];
  readonly spoilingRain: readonly SpoilingRain[];
  readonly secondLook: { readonly date: CalendarDate; readonly words: string } | null;
  /** The gravest first. */
  readonly findings: readonly Finding[];
}

/**
 * Intersects what the labels of all products of a visit, and of earlier ones that still run, ask for, in local time. A
 * fact that nobody read is a hold that says what is missing, and what hangs on it is left undecided; constraints that
 * no time satisfies are a hold that names the two products. Refuses a question that can't be meant: what
 * refuseImpossibleQuestion and judgeWatering refuse.
 */
export function aftercareTimeline(question: AftercareQuestion): Outcome<AftercareTimeline> {
  const refusal = refuseImpossibleQuestion(question);
  if (refusal !== undefined) return refusal;
  const watering = judgeWithByHand([{ ...question, lawnNames: [] }]);
  if (!watering.ok) return watering;
  const [only] = watering.value;
  if (only === undefined) throw new Error("One watering was asked for and none was judged.");
  return accept(timelineOf(question, only));
}

/** The timeline of lawns whose watering was judged, alone or with other lawns of the property. The question must be one that can be meant. */
export function timelineOf(question: AftercareQuestion, watering: JudgedWatering): AftercareTimeline {
  const { products, visit, timeZone, zoneDataVersion, mowing, seedings } = question;
  const { answer, dry } = watering;
  const endContext = endContextsOf(question, watering);
  const signs = signMayNots(products, { ...question, endContext });
  const unread = unreadMayNots(products, timeZone);
  const mayNots = [...stateMayNots(question, endContext, dry), ...seedingMayNots(products, timeZone), ...signs.mayNots, ...unread];
  const from = { epochMilliseconds: visit.fromEpochMilliseconds, timeZone };
  const forbidden = AFTERCARE_ROWS.flatMap((row) => joinMayNots(row, mayNots, from));
  const lawn = lawnAtApplication(products, timeZone);
  return {
    timeZone,
    zoneDataVersion,
    visitEndsAtEpochMilliseconds: visit.untilEpochMilliseconds,
    steps: inTimeOrder([...forbidden, ...wateringSteps(answer, timeZone), ...wateringWithoutTime(question, watering), ...signsToPutUp(products, timeZone)]),
    watering: answer,
    lawnAtApplication: lawn.wanted,
    spoilingRain: spoilingRain(products, { ...question, epochMilliseconds: visit.fromEpochMilliseconds }),
    secondLook: secondLookOf(question),
    findings: gravestFirst([
      ...unreadFindings(products, timeZone),
      ...crewWhilePeopleStayOff(products, visit, timeZone, endContext),
      ...watering.findings,
      ...lawn.findings,
      ...mowingDaysInTheWay(forbidden, mowing, visit, timeZone),
      ...mowedTooShortlyBefore(products, mowing, timeZone),
      ...seedingFindings(products, seedings, timeZone),
      ...signs.findings,
    ]),
  };
}

type EndContextOf = (applied: AppliedProduct) => EndContext;

/**
 * A product's last watering hours take a search: it is made when a constraint first waits for water, and once. What can't
 * be watered in by its own date has no last hours, and where no time to water was found nothing that still wants water has.
 */
function endContextsOf({ products, visit, hours, timeZone, estimates }: AftercareQuestion, { answer, lostToOthers }: JudgedWatering): EndContextOf {
  const late = answer.kind === "window" ? lostToOthers.map(({ applied }) => applied) : products.filter(({ wateredInAtEpochMilliseconds: at }) => typeof at !== "number");
  const found = new Map<AppliedProduct, number | null>(late.map((applied) => [applied, null]));
  const wateredInAt = (applied: AppliedProduct) => {
    const known = found.get(applied);
    if (known !== undefined) return known;
    const at = wateredInAtLatest(applied, visit, hours, timeZone);
    found.set(applied, at);
    return at;
  };
  return (applied) => ({
    timeZone,
    estimates,
    get wateredInAtEpochMilliseconds() {
      return wateredInAt(applied);
    },
  });
}

const KIND_OF_ROW: Readonly<Record<AftercareRowName, AftercareKind>> = {
  "people-and-pets": "people-and-pets",
  watering: "watering-not-before",
  mowing: "mowing-after",
  seeding: "seeding-after",
  sign: "posting-sign",
};

/** Where nobody has read how long something is forbidden, it is forbidden until somebody has. */
function unreadMayNots(products: readonly AppliedProduct[], timeZone: string): readonly MayNot[] {
  return AFTERCARE_ROWS.flatMap((row) => {
    const kind = KIND_OF_ROW[row];
    return products
      .filter(({ label }) => label.facts[kind] === "unknown")
      .map((applied): MayNot => {
        const productName = appliedName(applied, timeZone);
        const reason = { productName, kind, labelWords: "", basis: "label", source: "label, not read" } as const;
        const end = endOnState("the label has been read");
        return { row, startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds, end, movesWithWork: !isOfOtherWork(applied), reason };
      });
  });
}

const STATE_KINDS = [
  { row: "people-and-pets", kind: "people-and-pets" },
  { row: "mowing", kind: "mowing-after" },
] as const;

/**
 * What keeps people and pets, mowers and water off: from the start of each application until its own end. Water is kept
 * off for rain that would spoil too, where the water is as much.
 */
function stateMayNots(question: AftercareQuestion, endContext: EndContextOf, staysDry: readonly StaysDry[]): readonly MayNot[] {
  const { products, timeZone } = question;
  const offLawn = STATE_KINDS.flatMap(({ row, kind }) =>
    constraintsOf(products, kind).map(({ applied, constraint }): MayNot => ({
      row,
      startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds,
      end: endOf(constraint.untilLaterOf, applied.application, endContext(applied)),
      movesWithWork: !isOfOtherWork(applied),
      reason: reasonFor(appliedName(applied, timeZone), constraint),
    })),
  );
  const dry = staysDry.map(({ applied, constraint, end }): MayNot => ({
    row: "watering",
    startsAtEpochMilliseconds: applied.application.startsAtEpochMilliseconds,
    end,
    movesWithWork: !isOfOtherWork(applied),
    reason: reasonFor(appliedName(applied, timeZone), constraint),
  }));
  return [...offLawn, ...dry];
}

function secondLookOf({ secondLook, visit, timeZone }: AftercareQuestion): AftercareTimeline["secondLook"] {
  if (secondLook === "none") return null;
  const visitDate = calendarDateIn(timeZone, visit.untilEpochMilliseconds);
  const date = addDays(visitDate, secondLook.daysAfter);
  return { date, words: `Second look on ${dateWords(date)}, ${daysWords(secondLook.daysAfter)} after, by ${secondLook.programName}.` };
}
