// Watering in, seeding and signs as published, each with its source beside it.
import { describe, expect, test } from "vitest";
import { type SignDownTrigger } from "#domain/label/aftercare-constraint";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { irrigationRun } from "#domain/mixing/irrigation-run";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { decimal, rational } from "#domain/quantities/rational";
import { type Authority } from "#domain/weather/spray-limits";
import { aftercareQuestion, appliedOf, FRONT, hoursAfterEnd, labelOf, rowOf, says } from "../support/aftercare-builders";
import { valueOf } from "../support/domain-answers";

describe("minutes for a depth", () => {
  test.each([
    // 96.25 x 12 gpm / 900 sq ft = 1.28 in/h; half an inch in 23.4 min, run as 12, rest 30, 12: calcady.com, precipitation rate.
    ["six rotors of 2 gpm on 30 by 30 ft, half an inch", rational(96_25n * 12n, 900_00n), "0.5", 24],
    // 10 gpm on 1,000 sq ft = 0.9625 in/h: Klickitat PUD, sprinkler rates. A quarter inch: 15.58 min.
    ["10 gpm on 1,000 sq ft, a quarter inch", decimal("0.9625"), "0.25", 16],
  ])("%s", (_name, inchesPerHour, inches, minutes) => {
    const station = { ...FRONT, depthPerHour: exactly("in", inchesPerHour), cycle: { longestRunMinutes: 12, soakMinutes: 30 } };
    expect(valueOf(irrigationRun(station, { least: of("in", inches), most: "none" }, "us"))).toMatchObject({ totalMinutes: minutes });
  });
});

describe("signs, for work that ended on Friday, May 1, 2026 at 4 pm in Chicago", () => {
  const down = (mayComeDown: SignDownTrigger, upBy: "at-start" | "immediately-following", source: string) => {
    const law: Authority = { basis: "law", source };
    const visit = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(labelOf("Alpha", says("posting-sign", { upBy, mayComeDown }, law)))])));
    return rowOf(visit.steps, "sign").find(([kind]) => kind === "may-not")?.[2];
  };
  const hours = (anchor: "application-end" | "posting", count: number): SignDownTrigger => ({ trigger: "elapsed", anchor, durationMinutes: count * 60, orReentryIfLater: true });
  test.each([
    ["Illinois: removed on the day following", down({ trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }, "immediately-following", "415 ILCS 65/3(a)"), "2026-05-02T05:00"],
    ["Washington: at least 24 h, or the label's interval if longer", down(hours("application-end", 24), "at-start", "RCW 17.21.410"), "2026-05-02T21:00"],
    ["Maine: at least two days after completion", down({ trigger: "days-after-completion", daysAfter: 2, orReentryIfLater: false }, "at-start", "01-026 CMR ch. 28 § 3"), "2026-05-03T21:00"],
    ["New Jersey: after 72 h", down(hours("posting", 72), "at-start", "N.J.A.C. 7:30-9.13"), "2026-05-04T20:00"],
  ])("%s", (_name, found, expected) => expect(found).toBe(expected));
});

describe("watering in", () => {
  // Immediately, with half to one inch: University of Kentucky (Townsend), July 3, 2018, preventive grub insecticides.
  const grub = labelOf("Grubclear", says("watering-in", { by: hoursAfterEnd(1), depth: { least: of("in", "0.5"), most: of("in", "1") }, rain: "not-stated" }));
  // Iron is not to be watered in: Kreuser, University of Nebraska, Golfdom, August 15, 2018. How long it stays dry is common practice.
  const overnight: Authority = { basis: "common-practice", source: "common practice: foliar iron stays dry overnight" };
  const iron = labelOf("Ferrox Foliar", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] }, overnight));
  test("a grub insecticide and foliar iron in one visit are at odds, and the office may move the iron", () => {
    const visit = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(grub), appliedOf(iron)])));
    expect(visit.findings).toMatchObject([{ level: "hold", rule: "no-common-watering-time", answerableBy: "office", source: "common-practice", about: ["Ferrox Foliar", "Grubclear"] }]);
  });
  test("alone it is watered with its half inch within the hour", () => {
    const visit = valueOf(aftercareTimeline(aftercareQuestion([appliedOf(grub)])));
    expect(rowOf(visit.steps, "watering")).toEqual([["must", "2026-05-01T21:00", "2026-05-01T22:00"]]);
    expect(visit.watering).toMatchObject({ depthWords: "½ in", stations: [{ totalMinutes: 40 }] });
  });
});
