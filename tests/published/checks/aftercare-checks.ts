// Watering in, coming back on the lawn and signs as published, each with its source beside it.
import { expect } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { type SignDownTrigger } from "#domain/label/aftercare-constraint";
import { readSeedingAfter } from "#domain/label/label-aftercare";
import { readReach, readUntils } from "#domain/label/label-time";
import { readWateringIn } from "#domain/label/label-water";
import { aftercareTimeline } from "#domain/mixing/aftercare";
import { dueBy, notBefore } from "#domain/mixing/aftercare-instants";
import { irrigationRun } from "#domain/mixing/irrigation-run";
import { seedingFindings } from "#domain/mixing/seeding-aftercare";
import { exactly } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { decimal, type Rational, rational } from "#domain/quantities/rational";
import { type Authority } from "#domain/weather/spray-limits";
import { aftercareQuestion, appliedOf, at, CHICAGO, FRONT, HOUR, hoursAfterEnd, labelOf, rowOf, says, untilState } from "../../support/aftercare-builders";
import { day, readAs, valueOf } from "../../support/domain-answers";
import { type PublishedEntry, type PublishedRow, type PublishedStatement } from "../../support/published-check";

const visitOf = (...labels: Parameters<typeof appliedOf>[0][]) => valueOf(aftercareTimeline(aftercareQuestion(labels.map((label) => appliedOf(label)))));

function minutesOf(inchesPerHour: Rational, inches: string): number {
  const station = { ...FRONT, depthPerHour: exactly("in", inchesPerHour), cycle: { longestRunMinutes: 12, soakMinutes: 30 } };
  const run = valueOf(irrigationRun(station, { least: of("in", inches), most: "none" }, "us"));
  return run.kind === "run" ? run.totalMinutes : Number.NaN;
}

/** The controller's minutes are whole, and never less than the depth asks for. */
const minutes: readonly PublishedRow[] = [
  { row: "infiltration.4", inputs: "six rotors of 2 gpm on 30 by 30 ft, half an inch (23.4 min printed)", expected: 24, tolerance: 0, source: "https://calcady.com/trade/landscaping/precipitation-rate", status: "seen", computed: () => minutesOf(rational(96_25n * 12n, 900_00n), "0.5"), second: Math.ceil(30 / ((96.25 * 12) / 900)) },
  { row: ["water.28", "water.29"], inputs: "10 gpm on 1,000 sq ft, a quarter inch (0.9625 in an hour printed)", expected: 16, tolerance: 0, source: "Klickitat PUD, https://www.kpud.org/sprinklerRates.php", status: "seen", computed: () => minutesOf(decimal("0.9625"), "0.25"), second: Math.ceil(15 / 0.9625) },
];

// Work that ended on Friday, May 1, 2026 at 4 pm in Chicago.
const down = (mayComeDown: SignDownTrigger, upBy: "at-start" | "immediately-following", source: string) => {
  const law: Authority = { basis: "law", source };
  return rowOf(visitOf(labelOf("Alpha", says("posting-sign", { upBy, mayComeDown }, law))).steps, "sign").find(([kind]) => kind === "may-not")?.[2];
};
const hours = (anchor: "application-end" | "posting", count: number): SignDownTrigger => ({ trigger: "elapsed", anchor, durationMinutes: count * 60, orReentryIfLater: true });
const signs = (
  [
    ["elsewhere.5", "Illinois: removed on the day following", { trigger: "day-following", daysFollowing: 1, orReentryIfLater: false }, "immediately-following", "415 ILCS 65/3(a)", "2026-05-02T05:00"],
    ["elsewhere.6", "Washington: at least 24 h, or the label's interval if longer", hours("application-end", 24), "at-start", "RCW 17.21.410", "2026-05-02T21:00"],
    ["elsewhere.7", "Maine: at least two days after completion", { trigger: "days-after-completion", daysAfter: 2, orReentryIfLater: false }, "at-start", "01-026 CMR ch. 28 § 3", "2026-05-03T21:00"],
    ["elsewhere.8", "New Jersey: after 72 h", hours("posting", 72), "at-start", "N.J.A.C. 7:30-9.13", "2026-05-04T20:00"],
  ] as const
).map(([row, name, mayComeDown, upBy, source, expected]): PublishedStatement => ({ row, says: `signs in ${name}`, source, status: "seen", holds: () => expect(down(mayComeDown, upBy, source)).toBe(expected) }));

const KENTUCKY = "Univ. of Kentucky (Townsend), July 3, 2018, https://kentuckypestnews.wordpress.com/2018/07/03/time-for-preventive-white-grub-control/";
const KREUSER = "Kreuser, UNL, Golfdom 15 Aug 2018, https://www.golfdom.com/treatment-of-iron-deficiency-and-chlorosis/";
const OREGON = "WSU Tree Fruit; Oregon IPM Center Fall 2020, https://agsci.oregonstate.edu/oipmc/oregon-ipm-center-newsletter-vol-i-iss-3-fall-2020-reis-v-phis";
const grub = labelOf("Grubclear", says("watering-in", readAs(readWateringIn("immediately, 0.5 to 1 in"))));
// How long iron stays dry is common practice.
const overnight: Authority = { basis: "common-practice", source: "common practice: foliar iron stays dry overnight" };
const iron = labelOf("Ferrox Foliar", says("watering-not-before", { untilLaterOf: [hoursAfterEnd(12)] }, overnight));
const backAfter = (name: string, ...hoursUntil: number[]) => labelOf(name, says("people-and-pets", { untilLaterOf: hoursUntil.map(hoursAfterEnd) }));

const inWords: readonly PublishedStatement[] = [
  {
    row: ["weather-limits.12", "iron.3"],
    says: "a grub insecticide that is watered in at once and iron that is not are at odds in one visit, and the office may move the iron",
    source: KREUSER,
    status: "seen",
    holds: () => expect(visitOf(grub, iron).findings).toMatchObject([{ level: "hold", rule: "no-common-watering-time", answerableBy: "office", source: "common-practice", about: ["Ferrox Foliar", "Grubclear"] }]),
  },
  {
    row: "weather-limits.12",
    says: "alone the grub insecticide is watered with its half inch within the hour",
    source: KENTUCKY,
    status: "seen",
    holds: () => {
      const visit = visitOf(grub);
      expect(rowOf(visit.steps, "watering")).toEqual([["must", "2026-05-01T21:00", "2026-05-01T22:00"]]);
      expect(visit.watering).toMatchObject({ depthWords: "½ in", stations: [{ totalMinutes: 40 }] });
    },
  },
  {
    row: "mixing.7",
    says: "of a mix with intervals of 4, 12 and 24 h the longest holds, in whatever order they are put down",
    source: OREGON,
    status: "seen",
    holds: () => {
      const labels = [backAfter("Alpha", 4), backAfter("Beta", 24), backAfter("Gamma", 12)];
      for (const order of [labels, labels.toReversed()]) {
        expect(rowOf(visitOf(...order).steps, "people-and-pets")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-02T21:00"]]);
      }
    },
  },
  {
    row: "mixing.12",
    says: "lawns: until sprays have dried, which is an estimate",
    source: "from memory",
    status: "memory",
    holds: () => {
      expect(readUntils("until sprays have dried")).toMatchObject({ ok: true, value: [untilState("dry")] });
      const [step] = visitOf(labelOf("Alpha", says("people-and-pets", { untilLaterOf: [untilState("dry")] }))).steps.filter(({ row }) => row === "people-and-pets");
      expect(step).toMatchObject({ kind: "may-not", isEstimate: true });
    },
  },
];

const CALIFORNIA = "Calif. 3 CCR 6772(a)(4)";
const STEPS = "Six steps for success (same six steps as UGA's Murphy; author not shown), https://www.turfmagazine.com/services/six-steps-for-success-with-preemergent-herbicides/";
const [MINUTE, DAY_HOURS] = [60_000, 24];
/** Work of an hour that ended then. */
const workUntil = (text: string) => ({ startsAtEpochMilliseconds: at(text) - HOUR, endsAtEpochMilliseconds: at(text), postedAtEpochMilliseconds: "not-posted" }) as const;

const days: readonly PublishedStatement[] = [
  {
    row: "mixing.10",
    says: "a day of a label is never over before 24 h from the end of the application, at whatever hour and in the nights in which clocks change",
    source: CALIFORNIA,
    status: "seen",
    holds: () => {
      const oneDay = readAs(readReach("1 day"));
      for (const night of ["2026-05-01T00:00-05:00", "2026-03-07T00:00-06:00", "2026-10-31T00:00-05:00"]) {
        for (let minute = 0; minute < DAY_HOURS * 60; minute += 15) {
          const work = workUntil(new Date(at(night) + minute * MINUTE).toISOString());
          expect(notBefore(oneDay, work, CHICAGO).atEpochMilliseconds).toBeGreaterThanOrEqual(work.endsAtEpochMilliseconds + DAY_HOURS * HOUR);
          expect(oneDay.anchor === "days" && dueBy(oneDay, work, CHICAGO) <= work.endsAtEpochMilliseconds + DAY_HOURS * HOUR).toBe(true);
        }
      }
    },
  },
  {
    row: "mixing.11",
    says: "a label states its interval in hours or in days, and the two are told apart",
    source: "40 CFR 156.208",
    status: "seen",
    holds: () => expect([readReach("48 hours"), readReach("2 days")]).toMatchObject([{ value: { anchor: "application-end", durationMinutes: 2880 } }, { value: { anchor: "days", days: 2 } }]),
  },
  {
    row: "weather-limits.15",
    says: "a pre-emergent is watered in within 7 days and not mowed until then",
    source: STEPS,
    status: "seen",
    holds: () => {
      const mowing = says("mowing-after", { untilLaterOf: readAs(readUntils("until watered in")) });
      const visit = visitOf(labelOf("Barrier", { ...says("watering-in", readAs(readWateringIn("0.5 in within 7 days"))), ...mowing }));
      // Begun on Friday, May 1 at 3 pm: seven times 24 h later is the last moment for both.
      expect(rowOf(visit.steps, "watering")).toEqual([["must", "2026-05-01T21:00", "2026-05-08T20:00"]]);
      expect(rowOf(visit.steps, "mowing")).toEqual([["may-not", "2026-05-01T20:00", "2026-05-08T20:00"]]);
    },
  },
];

// Weeks from the herbicide to seed of Kentucky bluegrass, broadcast and slit-seeded, as the study's abstract has them.
const KEELEY = "Keeley & Zhou (Kansas State), Weed Technology 19(1), 2005, https://bioone.org/journals/weed-technology/volume-19/issue-1/WT-03-199R/";
const seedings: readonly PublishedStatement[] = (
  [
    ["dithiopyr", 6, 11],
    ["pendimethalin", 8, 10],
    ["prodiamine", 14, 16],
  ] as const
).map(([name, broadcastWeeks, slitWeeks]) => ({
  row: ["mixing.13", "mixing.14"],
  says: `${name}: broadcast seed after ${String(broadcastWeeks)} weeks, slit seed after ${String(slitWeeks)}`,
  source: KEELEY,
  status: "seen",
  holds: () => {
    const label = labelOf(name, says("seeding-after", readAs(readSeedingAfter(`broadcast ${String(broadcastWeeks)} weeks, slit ${String(slitWeeks)} weeks`))));
    const onDay = (method: "broadcast" | "slit", daysAfter: number) =>
      seedingFindings([appliedOf(label)], [{ date: addDays(day("2026-05-01"), daysAfter), method, standing: "planned" }], CHICAGO).map(({ rule }) => rule);
    for (const [method, weeks] of [["broadcast", broadcastWeeks], ["slit", slitWeeks]] as const) {
      expect(onDay(method, 7 * weeks)).toEqual(["seeding-too-soon-after"]);
      expect(onDay(method, 7 * weeks + 1)).toEqual([]);
    }
    expect(onDay("slit", 7 * broadcastWeeks + 1)).toEqual(["seeding-too-soon-after"]);
  },
}));

export const AFTERCARE_CHECKS: readonly PublishedEntry[] = [...minutes, ...signs, ...inWords, ...days, ...seedings];
