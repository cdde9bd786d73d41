import { expect, test } from "vitest";
import { comingHighColumns, comingHighsOf } from "#application/days/coming-highs";

test("the highs of the days after come out of their columns in order and go back into them", () => {
  const columns = { forecastNextHighF: 75, forecastSecondHighF: null, forecastThirdHighF: 81 };
  expect(comingHighsOf(columns)).toEqual([75, null, 81]);
  expect(comingHighColumns([75, null, 81])).toEqual(columns);
  expect(comingHighColumns([])).toEqual({ forecastNextHighF: null, forecastSecondHighF: null, forecastThirdHighF: null });
});
