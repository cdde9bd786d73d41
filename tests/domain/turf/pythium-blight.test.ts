import { describe, expect, test } from "vitest";
import { type TurfHour } from "#domain/turf/disease-risk";
import {
  KENTUCKY_PYTHIUM,
  NUTTER_PYTHIUM,
  judgePythiumKentucky,
  judgePythiumNutter,
} from "#domain/turf/pythium-blight";
import { noonToNoon } from "#domain/weather/local-hours";
import { day, refusalOf, valueOf } from "../../support/domain-answers";

const NEW_YORK = "America/New_York";
const hoursOf = (date: string, weather: (hoursAfterNoon: number) => readonly [number, number]) => {
  const noons = valueOf(noonToNoon(day(date), NEW_YORK));
  const count = (noons.untilEpochMilliseconds - noons.fromEpochMilliseconds) / 3_600_000;
  const hours: TurfHour[] = Array.from({ length: count }, (_, index) => {
    const [airTemperatureC, relativeHumidityPercent] = weather(index);
    return {
      startsAtEpochMilliseconds: noons.fromEpochMilliseconds + index * 3_600_000,
      airTemperatureC,
      relativeHumidityPercent,
    };
  });
  return { noons, hours };
};
const hotThenHumid = (index: number) =>
  (index < 5 ? [32, 55] : index < 20 ? [23, 95] : [26, 70]) as readonly [number, number];

describe("Nutter, Cole & Schein", () => {
  test("heat in the afternoon and a humid warm night are favorable", () => {
    const { noons, hours } = hoursOf("2026-07-10", hotThenHumid);
    const answer = valueOf(judgePythiumNutter(hours, noons));
    expect(answer).toMatchObject({ model: NUTTER_PYTHIUM, isFavorable: true });
    expect(answer.conditions.map(({ found }) => found)).toEqual([32, 15, 23]);
  });
  test("humidity before the heat doesn't count", () => {
    const { noons, hours } = hoursOf("2026-07-10", (index) => (index < 18 ? [23, 95] : [32, 55]));
    expect(valueOf(judgePythiumNutter(hours, noons)).conditions[1]).toMatchObject({ found: 0, isMet: false });
  });
  test("without heat no humid hour follows it", () => {
    const { noons, hours } = hoursOf("2026-07-10", () => [25, 95]);
    expect(valueOf(judgePythiumNutter(hours, noons)).conditions.map(({ isMet }) => isMet)).toEqual([
      false,
      false,
      true,
    ]);
  });
  test.each([
    ["2026-03-07", 23],
    ["2026-07-10", 24],
    ["2026-10-31", 25],
  ])("the day from noon of %s has %d hours", (date, count) => {
    const { noons, hours } = hoursOf(date, hotThenHumid);
    expect(hours).toHaveLength(count);
    expect(judgePythiumNutter(hours, noons).ok).toBe(true);
    expect(refusalOf(judgePythiumNutter(hours.slice(0, -1), noons)).kind).toBe("missing-fact");
  });
  test("hours outside the day are left alone; a gap and an impossible reading are named", () => {
    const { noons, hours } = hoursOf("2026-07-10", hotThenHumid);
    const cold = {
      startsAtEpochMilliseconds: noons.untilEpochMilliseconds,
      airTemperatureC: 5,
      relativeHumidityPercent: 50,
    };
    expect(valueOf(judgePythiumNutter([...hours, cold], noons)).isFavorable).toBe(true);
    expect(
      refusalOf(
        judgePythiumNutter(
          hours.filter((_, index) => index !== 3),
          noons,
        ),
      ).field,
    ).toBe("2026-07-10T19:00");
    const wrong = hours.map((hour, index) => (index === 3 ? { ...hour, relativeHumidityPercent: 120 } : hour));
    expect(refusalOf(judgePythiumNutter(wrong, noons)).field).toBe("3 h after noon relativeHumidityPercent");
  });
});

describe("Kentucky model 1", () => {
  test("asks for less heat and fewer hours, and for the humidity that counts as high", () => {
    const { noons, hours } = hoursOf("2026-07-10", (index) =>
      index < 5 ? [28, 55] : index < 15 ? [21, 90] : [22, 70],
    );
    expect(valueOf(judgePythiumKentucky(hours, noons, 90))).toMatchObject({
      model: KENTUCKY_PYTHIUM,
      isFavorable: true,
    });
    expect(valueOf(judgePythiumKentucky(hours, noons, 91)).isFavorable).toBe(false);
    expect(refusalOf(judgePythiumKentucky(hours, noons, 0.9 * 1000)).field).toBe("highHumidityPercent");
    expect(valueOf(judgePythiumNutter(hours, noons)).isFavorable).toBe(false);
  });
});
