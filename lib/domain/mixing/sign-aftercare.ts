import { addDays, type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { groupedBy } from "#domain/foundation/grouping";
import { type SignUpTrigger, type StatedConstraint, statedConstraint } from "#domain/label/aftercare-constraint";
import { type AftercareEnd, type EndContext, endOf, endOnState, latestEnd, notBefore } from "#domain/mixing/aftercare-instants";
import { type AftercareStep, inReasonOrder, type MayNot, reasonFor } from "#domain/mixing/aftercare-step";
import { type AppliedConstraint, type AppliedProduct, appliedName, constraintsOf, isOfOtherWork } from "#domain/mixing/applied-product";
import { dayIn } from "#domain/mixing/clock-periods";
import { localWords } from "#domain/mixing/local-words";
import { type Place, sunTimesOn } from "#domain/weather/sun-times";

/** What the end of a sign's time hangs on. The place is where the sun sets. */
export interface SignContext {
  readonly endContext: (applied: AppliedProduct) => EndContext;
  readonly timeZone: string;
  readonly place: Place | "unknown";
}

type Sign = AppliedConstraint<"posting-sign">;

/** What a sign waits for where the sunset that ends its time can't be computed. */
const SUNSET = "sunset";

const UP_WORDS: Readonly<Record<SignUpTrigger, string>> = {
  "before-application": "before the application",
  "at-start": "at the start of the application",
  "at-time-of-application": "at the time of the application",
  "immediately-following": "immediately following the application",
  "on-day-of-application": "on the day of the application",
};

/**
 * When the sign has to stand. Only "immediately following" is met after the work; the others are met for certain when it
 * stands as the work begins.
 */
function upByInstant({ applied, constraint }: Sign): number {
  const { startsAtEpochMilliseconds, endsAtEpochMilliseconds } = applied.application;
  return constraint.upBy === "immediately-following" ? endsAtEpochMilliseconds : startsAtEpochMilliseconds;
}

/** When a sign went up, or will: from then on its time is counted. */
export function signUpAt(sign: Sign): number {
  const posted = sign.applied.application.postedAtEpochMilliseconds;
  return posted === "not-posted" ? upByInstant(sign) : posted;
}

/**
 * The signs of this visit that do not stand yet, each with when it has to. Of label and law whoever wants it sooner is
 * told first; what asks in the same words is told once, with all its reasons.
 */
export function signsToPutUp(products: readonly AppliedProduct[], timeZone: string): readonly AftercareStep[] {
  const due = products.filter(
    ({ appliedIn, application }) => appliedIn === "this-visit" && application.postedAtEpochMilliseconds === "not-posted",
  );
  const inOneWord = groupedBy(constraintsOf(due, "posting-sign"), (sign) => `${String(upByInstant(sign))} ${sign.constraint.upBy}`);
  return [...inOneWord.values()].flatMap((signs) => {
    const [first] = signs;
    if (first === undefined) return [];
    const by = upByInstant(first);
    const startsAtEpochMilliseconds = Math.min(...signs.map(({ applied }) => applied.application.startsAtEpochMilliseconds));
    return [
      {
        row: "sign",
        kind: "must",
        startsAtEpochMilliseconds,
        endsAtEpochMilliseconds: by,
        isEstimate: false,
        words: `Put the sign up ${UP_WORDS[first.constraint.upBy]}.`,
        startsAtWords: localWords(startsAtEpochMilliseconds, timeZone, "start"),
        endsAtWords: localWords(by, timeZone, "due"),
        reasons: inReasonOrder(signs.map(({ applied, constraint }) => reasonFor(appliedName(applied, timeZone), constraint))),
      },
    ];
  });
}

/** How long each sign must stay up, with a hold where the sunset that ends it can't be computed. */
export function signMayNots(
  products: readonly AppliedProduct[],
  context: SignContext,
): { readonly mayNots: readonly MayNot[]; readonly findings: readonly Finding[] } {
  const ends = constraintsOf(products, "posting-sign").flatMap((sign) => {
    const end = comesDown(sign, context);
    return end === undefined ? [] : [{ sign, end }];
  });
  const mayNots = ends.map(({ sign, end }): MayNot => ({
    row: "sign",
    startsAtEpochMilliseconds: signUpAt(sign),
    end,
    movesWithWork: !isOfOtherWork(sign.applied) && sign.constraint.mayComeDown.trigger !== "sunset-of-day-following",
    reason: reasonFor(appliedName(sign.applied, context.timeZone), sign.constraint),
  }));
  const placeless = ends.filter(
    ({ sign, end }) => sign.constraint.mayComeDown.trigger === "sunset-of-day-following" && (context.place === "unknown" || end.waitsFor.includes(SUNSET)),
  );
  return { mayNots, findings: placeless.map(({ sign }) => placeMissing(sign)) };
}

function placeMissing({ applied, constraint }: Sign): Finding {
  return hold("office", {
    rule: "place-for-sunset-missing",
    source: constraint.basis,
    what: "The sign may come down at a sunset, and where the property lies is not on file.",
    toDo: "Put the property on the map.",
    citation: constraint.source,
    about: [applied.label.productName],
  });
}

function comesDown(sign: Sign, context: SignContext): AftercareEnd | undefined {
  const down = sign.constraint.mayComeDown;
  if (down.trigger === "no-time-required") return undefined;
  const reentry = down.orReentryIfLater ? reentryEnd(sign.applied, context) : undefined;
  if (down.trigger === "sunset-of-day-following") return sunsetEnd(sign, down.daysFollowing, reentry, context);
  return latestEnd([plainEnd(sign, down, context), ...(reentry === undefined ? [] : [reentry])]);
}

type PlainDown = Extract<
  StatedConstraint<"posting-sign">["mayComeDown"],
  { readonly trigger: "elapsed" | "day-following" | "days-after-completion" | "state" }
>;

function plainEnd(sign: Sign, down: PlainDown, { timeZone, endContext }: SignContext): AftercareEnd {
  const { application } = sign.applied;
  if (down.trigger === "state") {
    return endOf([{ anchor: "state", state: down.state }], application, endContext(sign.applied));
  }
  if (down.trigger === "day-following") {
    return notBefore({ anchor: "calendar-day", days: down.daysFollowing }, application, timeZone);
  }
  if (down.trigger === "days-after-completion") {
    return notBefore({ anchor: "days", from: "application-end", days: down.daysAfter }, application, timeZone);
  }
  const posted = { ...application, postedAtEpochMilliseconds: signUpAt(sign) };
  return notBefore({ anchor: down.anchor, durationMinutes: down.durationMinutes }, posted, timeZone);
}

/** When people may come back to this product's lawn; undefined where its label sets nothing. */
function reentryEnd(applied: AppliedProduct, context: SignContext): AftercareEnd | undefined {
  if (applied.label.facts["people-and-pets"] === "unknown") {
    return endOnState("people may come back");
  }
  const [people] = statedConstraint(applied.label, "people-and-pets");
  return people === undefined ? undefined : endOf(people.untilLaterOf, applied.application, context.endContext(applied));
}

function sunsetEnd(
  { applied }: Sign,
  daysFollowing: number,
  reentry: AftercareEnd | undefined,
  { timeZone, place }: SignContext,
): AftercareEnd {
  const dateAt = (instant: number) => calendarDateIn(timeZone, instant);
  const dayFollowing = addDays(dateAt(applied.application.endsAtEpochMilliseconds), daysFollowing);
  const waitsFor = reentry?.waitsFor ?? [];
  const notBefore = reentry?.notBeforeEpochMilliseconds ?? null;
  /** The sunset of the day following, or of that of an instant, where that is later. */
  const sunsetFor = (instant: number | null) => {
    const date = instant !== null && dateAt(instant) > dayFollowing ? dateAt(instant) : dayFollowing;
    return place === "unknown" ? undefined : sunsetOn(date, timeZone, place);
  };
  const stated = sunsetFor(notBefore);
  if (stated === undefined) return { ...endOnState(SUNSET), waitsFor: [SUNSET, ...waitsFor], notBeforeEpochMilliseconds: notBefore };
  const at = reentry === undefined ? stated : reentry.atEpochMilliseconds === null ? null : (sunsetFor(reentry.atEpochMilliseconds) ?? null);
  return { atEpochMilliseconds: at, isEstimate: at !== stated, waitsFor, notBeforeEpochMilliseconds: stated };
}

/** Sunset on a date; where the sun does not set, the end of the day; undefined where the place is none on earth. */
function sunsetOn(date: CalendarDate, timeZone: string, place: Place): number | undefined {
  const sun = sunTimesOn(date, timeZone, place);
  if (!sun.ok) return undefined;
  return sun.value.kind === "rises-and-sets" ? sun.value.sunsetEpochMilliseconds : dayIn(date, timeZone).untilEpochMilliseconds;
}
