import { describe, expect, test } from "vitest";
import { HEAVY_RAIN_ABOVE_INCHES, judgeGroundHour } from "#domain/weather/ground-hour";
import { type WeatherLimits } from "#domain/weather/spray-limits";
import { type WeatherHour, worstVerdict } from "#domain/weather/spray-reasons";
import { FAIR, label, mixOf } from "../../support/spray-builders";

const NEW_YORK = "America/New_York";
const startsAtEpochMilliseconds = Date.UTC(2026, 4, 4, 16);
const slot = { startsAtEpochMilliseconds, endsAtEpochMilliseconds: startsAtEpochMilliseconds + 3_600_000, localTime: "12:00", utcOffsetMinutes: -240 };

function judge(method: "spray" | "granular", change: Partial<WeatherHour>, limits: Partial<WeatherLimits> = {}) {
  const weather = { startsAtEpochMilliseconds, ...FAIR, ...change };
  return judgeGroundHour(mixOf(limits, method), { slot, weather, weatherAt: () => weather, timeZone: NEW_YORK, rainFromInches: 0.01 });
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
