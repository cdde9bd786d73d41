import { accept, type Outcome } from "#domain/foundation/outcome";
import { type AftercareStep } from "#domain/mixing/aftercare-step";
import { wateringSteps } from "#domain/mixing/watering-steps";
import { type JudgedWatering, judgeWaterings, type LawnsToWater, type WateringWindow } from "#domain/mixing/watering-window";
import { stated } from "#domain/weather/spray-limits";

/**
 * The watering of several lawns of one property, and where only the days and hours of its controller leave no time, the
 * times in which it may be done by hand: a controller is no law, and may be left for once. Refused as judgeWaterings refuses.
 */
export function judgeWithByHand(questions: readonly LawnsToWater[]): Outcome<readonly JudgedWatering[]> {
  const judged = judgeWaterings(questions);
  if (!judged.ok) return judged;
  const isLate = (_: unknown, index: number) => judged.value[index]?.answer.kind === "no-window";
  const late = questions.filter(isLate).filter(({ hours }) => stated(hours.controller).length > 0);
  const byHand = judgeWaterings(late.map((question) => ({ ...question, hours: { ...question.hours, controller: "none" } })));
  if (!byHand.ok) return byHand;
  return accept(
    judged.value.map((one, index) => {
      const found = byHand.value[late.findIndex((question) => question === questions[index])];
      return found?.answer.kind === "window" ? { ...one, byHand: { answer: found.answer, lostToOthers: found.lostToOthers } } : one;
    }),
  );
}

/** Water that is given by hand, as steps. Where rain does it too has a time of its own, which is left out. */
export function byHandSteps(answer: WateringWindow, timeZone: string): readonly AftercareStep[] {
  const { windows, rain } = answer;
  const told = { ...answer, windows: windows.slice(0, 1), starts: [], rain: rain === "counts" ? "not-stated" : rain } as const;
  return wateringSteps(told, timeZone).map((step) => ({ ...step, words: `${step.words} Start it by hand where the controller does not run then.` }));
}
