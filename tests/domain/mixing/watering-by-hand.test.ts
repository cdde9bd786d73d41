import { expect, test } from "vitest";
import { byHandSteps, judgeWithByHand } from "#domain/mixing/watering-by-hand";
import { type WateringHours } from "#domain/mixing/watering-hours";
import { of } from "#domain/quantities/quantity";
import { aftercareQuestion, appliedOf, byHouse, byLaw, daily, END, FEED, FRONT, HOUR } from "../../support/aftercare-builders";
import { refusalOf, valueOf } from "../../support/domain-answers";

/** The work ends on Friday, May 1, at 4 pm, and the label wants the water within a day. */
const asked = (hours: WateringHours) => ({ ...aftercareQuestion([appliedOf(FEED)], { hours }), lawnNames: ["Front"] });
const judged = (hours: WateringHours) => valueOf(judgeWithByHand([asked(hours)]))[0];
const ON_THURSDAYS = byHouse(daily(4, 9, [4]));

test("where only the controller is in the way there are times without it", () => {
  expect(judged({ localRules: "none", controller: ON_THURSDAYS })).toMatchObject({
    answer: { kind: "no-window" },
    byHand: { answer: { windows: [{ fromEpochMilliseconds: END, untilEpochMilliseconds: END + 24 * HOUR }] }, lostToOthers: [] },
  });
  expect(judged({ localRules: byLaw(daily(18, 22)), controller: ON_THURSDAYS })).toMatchObject({ byHand: { answer: { windows: [{ fromEpochMilliseconds: END + 2 * HOUR, untilEpochMilliseconds: END + 6 * HOUR }] } } });
});

test("there are none where a rule is in the way too, where the controller leaves time, and of lawns beside", () => {
  expect(judged({ localRules: byLaw(daily(4, 9, [4])), controller: ON_THURSDAYS })?.byHand).toBeUndefined();
  expect(judged({ localRules: "none", controller: byHouse(daily(4, 9)) })?.byHand).toBeUndefined();
  const both = valueOf(judgeWithByHand([{ ...asked({ localRules: "none", controller: ON_THURSDAYS }), products: [] }, asked({ localRules: "none", controller: ON_THURSDAYS })]));
  expect(both.map(({ byHand }) => byHand !== undefined)).toEqual([false, true]);
});

test("a refusal is handed on", () => {
  const stations = [{ ...FRONT, depthPerHour: of("in", "0") }];
  expect(refusalOf(judgeWithByHand([{ ...asked({ localRules: "none", controller: ON_THURSDAYS }), stations }])).field).toBe("Front depthPerHour");
});

test("the step has the stations' minutes, the date, and that it is done by hand", () => {
  const found = judged({ localRules: "none", controller: ON_THURSDAYS })?.byHand;
  if (found === undefined) throw new Error("No time was found.");
  expect(byHandSteps(found.answer, "America/Chicago")).toMatchObject([
    { startsAtWords: "Friday, May 1, 2026, 4 pm", endsAtWords: "Saturday, May 2, 2026, 4 pm", endsAtEpochMilliseconds: END + 24 * HOUR, words: "Water in with ¼ in. Front: 20 min. Start it by hand where the controller does not run then." },
  ]);
});
