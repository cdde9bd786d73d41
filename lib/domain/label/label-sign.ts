import { accept, refuse } from "#domain/foundation/outcome";
import { type ConstraintOf, type SignDownTrigger, type SignUpTrigger } from "#domain/label/aftercare-constraint";
import { type ReadAnswer } from "#domain/label/label-answer";
import { readState, readTime } from "#domain/label/label-time";

const UP: readonly (readonly [RegExp, SignUpTrigger])[] = [
  [/^before (?:the )?application$/iu, "before-application"],
  [/^at (?:the )?start$/iu, "at-start"],
  [/^at (?:the )?time of (?:the )?application$/iu, "at-time-of-application"],
  [/^immediately (?:following|after)(?: (?:the )?application)?$/iu, "immediately-following"],
  [/^on (?:the )?day of (?:the )?application$/iu, "on-day-of-application"],
];

const ASK = "Write when it goes up and when it may come down: up at start; down after 24 hours, or after sprays have dried.";
const OR_REENTRY = /,? or (?:at )?reentry if (?:that is )?later$/iu;

function readDown(value: string): ReadAnswer<SignDownTrigger> {
  const orReentryIfLater = OR_REENTRY.test(value);
  const words = value.replace(OR_REENTRY, "").trim();
  if (/^(?:no time(?: required)?|any ?time)$/iu.test(words)) return accept({ trigger: "no-time-required" });
  if (/^(?:on )?(?:the )?day following$/iu.test(words)) return accept({ trigger: "day-following", daysFollowing: 1, orReentryIfLater });
  if (/^(?:at )?sunset (?:of|on) the day following$/iu.test(words)) {
    return accept({ trigger: "sunset-of-day-following", daysFollowing: 1, orReentryIfLater });
  }
  const state = readState(words.replace(/^(?:after|when|once) /iu, ""));
  if (state !== undefined) return accept({ trigger: "state", state, orReentryIfLater });
  const time = readTime(words);
  if (!time.ok || time.value.unit === "months" || time.value.from === "start") return refuse(`"${value}" can't be read. ${ASK}`);
  if (time.value.unit === "days") {
    if (time.value.from === "posting") return refuse("Days of a sign count from the end of the application. Write hours after posting.");
    return accept({ trigger: "days-after-completion", daysAfter: time.value.count, orReentryIfLater });
  }
  const anchor = time.value.from === "posting" ? "posting" : "application-end";
  return accept({ trigger: "elapsed", anchor, durationMinutes: time.value.count, orReentryIfLater });
}

/**
 * Reads a sign that the label itself asks for: "up at start; down after 24 hours", "up before application; down the day
 * following", "… down after 2 days", "… down after sprays have dried". Refused: one of the two alone, words that are no
 * such time, months, hours from the start, days from posting.
 */
export function readPostingSign(value: string): ReadAnswer<Omit<ConstraintOf<"posting-sign">, "labelWords">> {
  const [, upWords, downWords] = /^up (.+?)[,;] ?down (.+)$/iu.exec(value) ?? [];
  if (upWords === undefined || downWords === undefined) return refuse(ASK);
  const upBy = UP.find(([pattern]) => pattern.test(upWords))?.[1];
  if (upBy === undefined) return refuse(`"${upWords}" can't be read. ${ASK}`);
  const mayComeDown = readDown(downWords);
  return mayComeDown.ok ? accept({ kind: "posting-sign", upBy, mayComeDown: mayComeDown.value }) : mayComeDown;
}
