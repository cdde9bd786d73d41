import { expect, test } from "vitest";
import { deltaTLines, wetBulbAndDeltaT } from "#domain/worksheets/delta-t-lines";

function hour(minute: number, temperatureF: number, relativeHumidityPercent: number) {
  return { minute, weather: { startsAtEpochMilliseconds: 0, temperatureF, relativeHumidityPercent, windMph: 5, rainInches: 0 } };
}

test("the hour with the largest Delta T is told, all of it in one scale", () => {
  expect(deltaTLines([hour(540, 70, 60), hour(720, 86, 40)])).toEqual([
    "Largest Delta T, at noon, with 86 °F and a humidity of 40%.",
    "In °C: 86 − 32 = 54; 54 ÷ 1.8 = 30 °C.",
    "Wet bulb by trial in the formula: 20.1392 °C, which is 68.3 °F.",
    "Delta T: 30 − 20.1392 = 9.8608 °C.",
  ]);
});

test("the wet bulb that is told gives the humidity back by the formula that is printed", () => {
  const saturation = (degreesC: number) => 0.6108 * Math.exp((17.27 * degreesC) / (degreesC + 237.3));
  expect(saturation(20.1392) - 0.000662 * 101.3 * (30 - 20.1392)).toBeCloseTo(0.4 * saturation(30), 4);
});

test("below freezing nothing is told, since the wet bulb is over water; the table has it still", () => {
  expect(deltaTLines([hour(540, 20, 60)])).toEqual([]);
  expect(wetBulbAndDeltaT(hour(540, 20, 60).weather)[0]).toMatch(/^-/u);
  expect(wetBulbAndDeltaT({ startsAtEpochMilliseconds: 0 })).toEqual(["", ""]);
});
