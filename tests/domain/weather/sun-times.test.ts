import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addDays } from "#domain/foundation/calendar-date";
import { dayOfYear } from "#domain/turf/daily-series";
import { refuseOutOfRange } from "#domain/turf/physical-range";
import { daylightHours } from "#domain/turf/solar-radiation";
import { localTimeAt } from "#domain/weather/local-hours";
import { placeRanges, sunTimesOn } from "#domain/weather/sun-times";
import { day, refusalOf, valueOf } from "../../support/domain-answers";
import { between } from "../../support/real-numbers";

const COLUMBUS = { latitudeDegrees: 39.96, longitudeDegrees: -83 };
const NEW_YORK = "America/New_York";

function riseAndSet(date: string, timeZone: string, place: { latitudeDegrees: number; longitudeDegrees: number }) {
  const sun = valueOf(sunTimesOn(day(date), timeZone, place));
  if (sun.kind !== "rises-and-sets") throw new Error(`the sun is ${sun.kind}`);
  return sun;
}

/** Sunrise or sunset by the short equations of NOAA's solar calculator (general solar position calculations), in UTC minutes. */
function plainSunMinutes(
  date: string,
  place: { latitudeDegrees: number; longitudeDegrees: number },
  side: 1 | -1,
): number {
  const angle = ((2 * Math.PI) / 365) * (dayOfYear(day(date)) - 1);
  const equationOfTime =
    229.18 *
    (0.000075 +
      0.001868 * Math.cos(angle) -
      0.032077 * Math.sin(angle) -
      0.014615 * Math.cos(2 * angle) -
      0.040849 * Math.sin(2 * angle));
  const declination =
    0.006918 -
    0.399912 * Math.cos(angle) +
    0.070257 * Math.sin(angle) -
    0.006758 * Math.cos(2 * angle) +
    0.000907 * Math.sin(2 * angle) -
    0.002697 * Math.cos(3 * angle) +
    0.00148 * Math.sin(3 * angle);
  const latitude = (place.latitudeDegrees * Math.PI) / 180;
  const cosine =
    Math.cos((90.833 * Math.PI) / 180) / (Math.cos(latitude) * Math.cos(declination)) -
    Math.tan(latitude) * Math.tan(declination);
  return 720 - 4 * (place.longitudeDegrees + side * ((Math.acos(cosine) * 180) / Math.PI)) - equationOfTime;
}

describe("sunrise and sunset", () => {
  // The short equations know no leap years: over 2024 to 2027, every day and at 49 degrees, they are at most 4.1 minutes off.
  test("agree with the short equations to a few minutes, all year and in the middle latitudes", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1460 }),
        between(25, 49),
        between(-125, -67),
        (after, latitudeDegrees, longitudeDegrees) => {
          const date = addDays(day("2024-01-01"), after);
          const place = { latitudeDegrees, longitudeDegrees };
          const sun = riseAndSet(date, "America/Chicago", place);
          const midnight = Date.parse(`${date}T00:00:00Z`);
          expect(
            Math.abs((sun.sunriseEpochMilliseconds - midnight) / 60_000 - plainSunMinutes(date, place, 1)),
          ).toBeLessThan(4.2);
          expect(
            Math.abs((sun.sunsetEpochMilliseconds - midnight) / 60_000 - plainSunMinutes(date, place, -1)),
          ).toBeLessThan(4.2);
        },
      ),
    );
  });
  test("the day is some minutes longer than without refraction", () => {
    for (let after = 0; after < 365; after += 7) {
      const date = addDays(day("2026-01-01"), after);
      const sun = riseAndSet(date, NEW_YORK, COLUMBUS);
      const hours = (sun.sunsetEpochMilliseconds - sun.sunriseEpochMilliseconds) / 3_600_000;
      const longer = hours - daylightHours(COLUMBUS.latitudeDegrees, dayOfYear(date));
      expect(longer).toBeGreaterThan(0.05);
      expect(longer).toBeLessThan(0.3);
    }
  });
  test.each(["2026-03-08", "2026-05-04", "2026-11-01", "2026-12-21"])(
    "on %s both lie on that local date, on the days when clocks change too",
    (date) => {
      const sun = riseAndSet(date, NEW_YORK, COLUMBUS);
      const rise = localTimeAt(sun.sunriseEpochMilliseconds, NEW_YORK);
      const set = localTimeAt(sun.sunsetEpochMilliseconds, NEW_YORK);
      expect([rise.date, set.date]).toEqual([date, date]);
      expect(rise.localTime < "12:00" && set.localTime > "12:00").toBe(true);
    },
  );
  test.each([
    ["Pacific/Kiritimati", { latitudeDegrees: 1.9, longitudeDegrees: -157.4 }],
    ["Pacific/Auckland", { latitudeDegrees: -44, longitudeDegrees: -176.5 }],
    ["America/Adak", { latitudeDegrees: 51.9, longitudeDegrees: -176.7 }],
    ["Pacific/Fiji", { latitudeDegrees: -17, longitudeDegrees: 180 }],
  ])("near the date line they are those of the clock's day: %s", (timeZone, place) => {
    const sun = riseAndSet("2026-05-04", timeZone, place);
    expect(localTimeAt(sun.sunriseEpochMilliseconds, timeZone).date).toBe("2026-05-04");
    expect(localTimeAt(sun.sunsetEpochMilliseconds, timeZone).date).toBe("2026-05-04");
  });
  test("near the pole the sun stays up or down", () => {
    const place = { latitudeDegrees: 71.3, longitudeDegrees: -156.8 };
    expect(valueOf(sunTimesOn(day("2026-06-21"), "America/Anchorage", place)).kind).toBe("always-up");
    expect(valueOf(sunTimesOn(day("2026-12-21"), "America/Anchorage", place)).kind).toBe("always-down");
  });
  test.each([
    ["latitudeDegrees", NEW_YORK, { ...COLUMBUS, latitudeDegrees: 91 }],
    ["longitudeDegrees", NEW_YORK, { ...COLUMBUS, longitudeDegrees: Number.NaN }],
    ["timeZone", "Eastern", COLUMBUS],
  ])("refuses an impossible %s", (field, timeZone, place) =>
    expect(refusalOf(sunTimesOn(day("2026-05-04"), timeZone, place)).field).toBe(field),
  );
});

test("a place is asked for on earth, its poles and its date line included", () => {
  expect(refuseOutOfRange([...placeRanges({ latitudeDegrees: 90, longitudeDegrees: -180 }), ...placeRanges({ latitudeDegrees: -90, longitudeDegrees: 180 })])).toBeUndefined();
  expect(refuseOutOfRange(placeRanges({ latitudeDegrees: 0, longitudeDegrees: 181 }))?.refusal).toMatchObject({ field: "longitudeDegrees", allowed: "from -180 to 180 °" });
});
