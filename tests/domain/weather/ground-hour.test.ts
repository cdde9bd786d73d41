import { describe, expect, test } from "vitest";
import { HEAVY_RAIN_ABOVE_INCHES, HEAVY_RAIN_TOGETHER_INCHES, HEAVY_RAIN_WITHIN_HOURS, judgeGroundHour } from "#domain/weather/ground-hour";
import { type WeatherLimits } from "#domain/weather/spray-limits";
import { type WeatherHour, worstVerdict } from "#domain/weather/spray-reasons";
import { FAIR, label, mixOf } from "../../support/spray-builders";

const NEW_YORK = "America/New_York";
const startsAtEpochMilliseconds = Date.UTC(2026, 4, 4, 16);
const slot = { startsAtEpochMilliseconds, endsAtEpochMilliseconds: startsAtEpochMilliseconds + 3_600_000, localTime: "12:00", utcOffsetMinutes: -240 };

const DRY = () => ({});

/** The hour from noon, and hours after it that are fair but for what changes them by their distance. */
function judge(method: "spray" | "granular", change: Partial<WeatherHour>, limits: Partial<WeatherLimits> = {}, after: (hours: number) => Partial<WeatherHour> | undefined = DRY) {
  const weather = { startsAtEpochMilliseconds, ...FAIR, ...change };
  const weatherAt = (startsAt: number) => {
    const own = after((startsAt - startsAtEpochMilliseconds) / 3_600_000);
    return own === undefined ? undefined : { startsAtEpochMilliseconds: startsAt, ...FAIR, ...own };
  };
  return judgeGroundHour(mixOf(limits, method), { slot, weather, weatherAt, timeZone: NEW_YORK, rainFromInches: 0.01, rainChanceFromPercent: 50 });
}
const rulesOf = (...parameters: Parameters<typeof judge>) => judge(...parameters).map(({ rule, verdict, isUndecided }) => `${rule} ${isUndecided ? "undecided" : verdict}`);

describe.each(["spray", "granular"] as const)("the ground under %s work whose label says nothing", (method) => {
  test("frozen or saturated soil closes, by common practice", () => {
    expect(rulesOf(method, { soil: "workable" })).toEqual([]);
    expect(rulesOf(method, { soil: "frozen" })).toEqual(["soil closed"]);
    expect(judge(method, { soil: "saturated" })).toMatchObject([
      { verdict: "closed", basis: "common-practice", sentence: "The soil is saturated; nothing goes on such soil." },
    ]);
  });
  test("a soil that nobody looked at is for care, since no forecast has it", () => {
    expect(rulesOf(method, { soil: undefined })).toEqual(["soil take-care"]);
    expect(judge(method, { soil: undefined })[0]?.sentence).toBe("Nobody has said whether the soil is frozen or saturated: look at the lawn.");
  });
  test("what a label says of the same soil is not said again, and what it leaves out is", () => {
    const frozenOnly = { soil: { closedWhen: ["frozen"], ...label } } as const;
    expect(rulesOf(method, { soil: "frozen" }, frozenOnly)).toEqual([]);
    expect(rulesOf(method, { soil: undefined }, frozenOnly)).toEqual([]);
    expect(rulesOf(method, { soil: "saturated" }, frozenOnly)).toEqual(["soil closed"]);
    expect(rulesOf(method, { soil: undefined }, { soil: { closedWhen: [], ...label } })).toEqual(["soil take-care"]);
    expect(rulesOf(method, { soil: "frozen" }, { soil: "unknown" })).toEqual(["soil closed"]);
  });
});

describe("rain on granules", () => {
  test("over 0.30 in an hour closes (American Meteorological Society: heavy rain), less is for care", () => {
    expect(HEAVY_RAIN_ABOVE_INCHES).toBe(0.3);
    expect([0, 0.009, 0.01, 0.3, 0.31, 2].map((rainInches) => worstVerdict(judge("granular", { rainInches })))).toEqual(["open", "open", "take-care", "take-care", "closed", "closed"]);
    expect(judge("granular", { rainInches: 2 })[0]?.sentence).toBe("It rains hard in this hour (2 in); Alpha would wash away.");
    expect(judge("granular", { rainInches: 0.05 })[0]).toMatchObject({
      basis: "common-practice",
      sentence: "It rains in this hour (0.05 in); Alpha sticks to wet leaves: see whether it must stay dry.",
    });
  });
  test("rain that nobody knows closes, undecided", () => expect(rulesOf("granular", { rainInches: undefined })).toEqual(["rain undecided"]));
  test("a label that limits rain decides instead", () => {
    expect(rulesOf("granular", { rainInches: 2 }, { heavyRain: { inches: 3, withinHours: 24, ...label } })).toEqual([]);
    expect(rulesOf("granular", { rainInches: 0.05 }, { rainfast: { minutes: 60, ...label } })).toEqual([]);
  });
  test("sprays are asked about rain elsewhere", () => expect(rulesOf("spray", { rainInches: 2 })).toEqual([]));
});

describe.each(["spray", "granular"] as const)("heavy rain after %s work whose label says nothing of rain", (method) => {
  const rainAt = (hour: number, rainInches: number) => (hours: number) => (hours === hour ? { rainInches } : {});
  const verdictAfter = (after: (hours: number) => Partial<WeatherHour> | undefined, limits: Partial<WeatherLimits> = {}) => rulesOf(method, {}, limits, after);

  test("an hour of more than 0.30 in within 24 h is for care, says when, and rests on common practice", () => {
    expect([rainAt(1, 2), rainAt(1, 0.31), rainAt(24, 0.31), rainAt(25, 2), rainAt(1, 0.3)].map((after) => verdictAfter(after))).toEqual([["heavy-rain take-care"], ["heavy-rain take-care"], ["heavy-rain take-care"], [], []]);
    expect(judge(method, {}, {}, rainAt(1, 2))).toMatchObject([
      { basis: "common-practice", productName: "Alpha", isUndecided: false, sentence: "It is to rain hard at 13:00 (2 in); Alpha may wash away." },
    ]);
    expect(judge(method, {}, {}, rainAt(20, 0.5))[0]?.sentence).toBe("It is to rain hard at 08:00 on 2026-05-05 (0.5 in); Alpha may wash away.");
  });
  test("2 in of lighter rain together within 24 h are for care (University of Missouri)", () => {
    const drizzle = (hours: number, inches: number) => (hour: number) => (hour <= hours ? { rainInches: inches } : {});
    expect([verdictAfter(drizzle(20, 0.1)), verdictAfter(drizzle(19, 0.1)), verdictAfter(drizzle(24, 0.08))]).toEqual([["heavy-rain take-care"], [], []]);
    expect(judge(method, {}, {}, drizzle(20, 0.1))[0]?.sentence).toBe("Rain of 2 in is expected within 24 h; Alpha may wash away.");
  });
  test("a forecast that ends before is for care, unless heavy rain is known in it", () => {
    const until = (last: number, change: (hours: number) => Partial<WeatherHour>) => (hours: number) => (hours <= last ? change(hours) : undefined);
    expect(judge(method, {}, {}, until(3, DRY)).map(({ verdict, sentence }) => `${verdict}: ${sentence}`)).toEqual([
      "take-care: The rain at 16:00 is not known: where heavy rain comes within 24 h, Alpha may wash away.",
    ]);
    expect(judge(method, {}, {}, until(3, rainAt(2, 1)))[0]?.sentence).toContain("It is to rain hard at 14:00");
    expect(verdictAfter(until(24, DRY))).toEqual([]);
  });
  test("a label that limits rain decides instead", () => {
    expect(verdictAfter(rainAt(1, 2), { rainfast: { minutes: 60, ...label } })).toEqual([]);
    expect(verdictAfter(rainAt(1, 2), { heavyRain: { inches: 3, withinHours: 24, ...label } })).toEqual([]);
    expect(verdictAfter(rainAt(1, 2), { heavyRain: "unknown" })).toEqual([]);
  });
});

test("how far and how much is looked for after the work is what was read", () => expect([HEAVY_RAIN_WITHIN_HOURS, HEAVY_RAIN_TOGETHER_INCHES]).toEqual([24, 2]));
