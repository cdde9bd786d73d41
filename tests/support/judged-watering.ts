// What was judged of a visit's watering, for the tests of its time: an iron that stays dry overnight and a feed with a date.
import { type AftercareQuestion } from "#domain/mixing/aftercare-question";
import { type AppliedProduct } from "#domain/mixing/applied-product";
import { judgeWatering } from "#domain/mixing/watering-window";
import { aftercareQuestion, appliedOf, at, FEED, IRON } from "./aftercare-builders";
import { valueOf } from "./domain-answers";

export const judge = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => valueOf(judgeWatering(aftercareQuestion(products, change)));

/** Its windows, each from and until, or why there are none. */
export const windowsOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) => {
  const { answer } = judge(products, change);
  return answer.kind === "window" ? answer.windows.map((one) => [one.fromEpochMilliseconds, one.untilEpochMilliseconds]) : answer.kind;
};

/** Its findings as "hold no-common-watering-time". */
export const rulesOf = (products: readonly AppliedProduct[], change: Partial<AftercareQuestion> = {}) =>
  judge(products, change).findings.map((finding) => `${finding.level} ${finding.rule}`);

export const IRON_AND_FEED = [appliedOf(IRON), appliedOf(FEED)];

/** A stretch of the morning after the work, as windowsOf gives it: morning("05:00", "08:00"). */
export const morning = (from: string, until: string) => [at(`2026-05-02T${from}-05:00`), at(`2026-05-02T${until}-05:00`)];
