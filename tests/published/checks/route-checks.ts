// Great circles and the shortest orders of stops, as published.
import { expect } from "vitest";
import { checkDayRoute } from "#domain/routing/check-day-route";
import { greatCircleMeters } from "#domain/routing/travel-time";
import { type PublishedEntry, type PublishedRow, type PublishedStatement, printedTo } from "../../support/published-check";
import { answerOf, dayOf, orderOf, stopAt, travelOf } from "../../support/route-days";

const GEO = "documentation of the Rust library geo 0.33, Haversine, https://docs.rs/geo/latest/geo/algorithm/line_measures/metric_spaces/constant.Haversine.html";
const ROSETTA = "Rosetta Code, Haversine formula (with a radius of 6371.0 km), https://rosettacode.org/wiki/Haversine_formula";

/** The way by the angle between two directions from the center of the earth, which needs no haversine. */
function byDirections(from: readonly [number, number], to: readonly [number, number]): number {
  const [one, other] = [from, to].map(([latitude, longitude]) => {
    const [up, round] = [(latitude * Math.PI) / 180, (longitude * Math.PI) / 180];
    return [Math.cos(up) * Math.cos(round), Math.cos(up) * Math.sin(round), Math.sin(up)] as const;
  }) as [readonly [number, number, number], readonly [number, number, number]];
  const cross = [one[1] * other[2] - one[2] * other[1], one[2] * other[0] - one[0] * other[2], one[0] * other[1] - one[1] * other[0]];
  const along = one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
  return 6_371_008.8 * Math.atan2(Math.hypot(...cross), along);
}

const way = (from: readonly [number, number], to: readonly [number, number]) =>
  greatCircleMeters({ latitudeDegrees: from[0], longitudeDegrees: from[1] }, { latitudeDegrees: to[0], longitudeDegrees: to[1] });

const SOFIA = [42.698334, 23.319941] as const;
const PLOVDIV = [42.136097, 24.742168] as const;
const NASHVILLE = [36.12, -86.67] as const;
const LOS_ANGELES = [33.94, -118.4] as const;

// Both were read in texts that hold the pages, not at the addresses themselves. The first is printed to fractions of a
// micrometer; its radius has more digits than ours, which moves it by less than a millimeter.
const rows: readonly PublishedRow[] = [
  { row: "elsewhere.9", inputs: "Sofia to Plovdiv, in m", expected: 132_433.09929460194, tolerance: 0.001, source: GEO, status: "seen-2nd", computed: () => way(SOFIA, PLOVDIV), second: byDirections(SOFIA, PLOVDIV) },
  { row: "elsewhere.10", inputs: "Nashville to Los Angeles, in km on a sphere of 6371.0 km", expected: 2886.444442837983, tolerance: 1e-6, source: ROSETTA, status: "seen-2nd", computed: () => (way(NASHVILLE, LOS_ANGELES) / 6_371_008.8) * 6371, second: (byDirections(NASHVILLE, LOS_ANGELES) / 6_371_008.8) * 6371 },
  { row: "elsewhere.11", inputs: "a nautical mile, 1 minute of a meridian, in m", expected: 1852, tolerance: 1.5, source: "its first definition, from memory", status: "memory", computed: () => way([45, 0], [45 + 1 / 60, 0]), second: byDirections([45, 0], [45 + 1 / 60, 0]) },
  { row: "elsewhere.11", inputs: "pole to pole, in km", expected: Math.PI * 6371.0088, tolerance: printedTo(6), source: "half a great circle", status: "calc", computed: () => way([90, 0], [-90, 0]) / 1000, second: byDirections([90, 0], [-90, 0]) / 1000 },
];

const LABELED_LINES = (text: string) => text.trim().split("\n").map((line) => line.trim().split(/\s+/).map(Number));

/** Miles between 13 cities of the United States. Google, OR-Tools, https://developers.google.com/optimization/routing/tsp, "Traveling Salesperson Problem". */
const MILES = LABELED_LINES(`
  0 2451 713 1018 1631 1374 2408 213 2571 875 1420 2145 1972
  2451 0 1745 1524 831 1240 959 2596 403 1589 1374 357 579
  713 1745 0 355 920 803 1737 851 1858 262 940 1453 1260
  1018 1524 355 0 700 862 1395 1123 1584 466 1056 1280 987
  1631 831 920 700 0 663 1021 1769 949 796 879 586 371
  1374 1240 803 862 663 0 1681 1551 1765 547 225 887 999
  2408 959 1737 1395 1021 1681 0 2493 678 1724 1891 1114 701
  213 2596 851 1123 1769 1551 2493 0 2699 1038 1605 2300 2099
  2571 403 1858 1584 949 1765 678 2699 0 1744 1645 653 600
  875 1589 262 466 796 547 1724 1038 1744 0 679 1272 1162
  1420 1374 940 1056 879 225 1891 1605 1645 679 0 1017 1200
  2145 357 1453 1280 586 887 1114 2300 653 1272 1017 0 504
  1972 579 1260 987 371 999 701 2099 600 1162 1200 504 0`);

/** The length of the shortest round tour by dynamic programming over sets (Held & Karp 1962). */
function shortestTour(table: readonly (readonly number[])[]): number {
  const others = table.length - 1;
  const way = (from: number, to: number) => table[from]?.[to] ?? Infinity;
  const best = Array.from({ length: 1 << others }, () => new Array<number>(others).fill(Infinity));
  const at = (set: number, last: number) => best[set]?.[last] ?? Infinity;
  for (let set = 1; set < 1 << others; set += 1) {
    for (let last = 0; last < others; last += 1) {
      if ((set & (1 << last)) === 0) continue;
      const before = set ^ (1 << last);
      const through = Array.from({ length: others }, (_, previous) => at(before, previous) + way(previous + 1, last + 1));
      const row = best[set];
      if (row !== undefined) row[last] = before === 0 ? way(0, last + 1) : Math.min(...through);
    }
  }
  return Math.min(...Array.from({ length: others }, (_, last) => at((1 << others) - 1, last) + way(last + 1, 0)));
}

const cities: PublishedStatement = {
  row: "elsewhere.12",
  says: "13 cities: the shortest tour, 7293 miles, which trying all sets proves",
  source: "OR-Tools, https://developers.google.com/optimization/routing/tsp (figure from memory)",
  status: "memory",
  holds: () => {
    expect(shortestTour(MILES)).toBe(7293);
    const travel = travelOf(MILES);
    const question = dayOf(MILES.slice(1).map((_, index) => stopAt(index + 1)));
    const route = answerOf(question, travel);
    expect(checkDayRoute(question, travel, route)).toEqual([]);
    expect(route.totals.driveSeconds).toBe(7293);
  },
};

/**
 * The instance n20w20.001 of Dumas et al. 1995, 20 stops with narrow windows, as printed in the OR-Tools user's manual,
 * chapter 9, "The TSPTW" (read in a repository that holds its text): travel, and the window of each. The matrix is
 * symmetric; its first two lines are taken from its columns.
 */
const NARROW_TRAVEL = LABELED_LINES(`
  17 10 0 47 23 13 26 15 25 22 26 24 27 44 7 5 23 21 25 18 29
  34 41 47 0 36 39 25 51 36 24 27 38 25 44 54 45 25 28 26 28 27
  7 26 23 36 0 27 11 17 35 22 30 36 30 22 25 26 14 23 28 20 10
  20 3 13 39 27 0 26 27 12 15 14 11 15 49 20 9 20 11 14 11 30
  10 27 26 25 11 26 0 26 31 14 23 32 22 25 31 28 6 17 21 15 4
  17 25 15 51 17 27 26 0 39 31 38 38 38 34 13 20 26 31 36 28 27
  28 15 25 36 35 12 31 39 0 17 9 2 11 56 32 21 24 13 11 15 35
  15 17 22 24 22 15 14 31 17 0 9 18 8 39 29 21 8 4 7 4 18
  23 17 26 27 30 14 23 38 9 9 0 11 2 48 33 23 17 7 2 10 27
  29 14 24 38 36 11 32 38 2 18 11 0 13 57 31 20 25 14 13 17 36
  23 18 27 25 30 15 22 38 11 8 2 13 0 47 34 24 16 7 2 10 26
  29 48 44 44 22 49 25 34 56 39 48 57 47 0 46 48 31 42 46 40 21
  21 17 7 54 25 20 31 13 32 29 33 31 34 46 0 11 29 28 32 25 33
  20 6 5 45 26 9 28 20 21 21 23 20 24 48 11 0 23 19 22 17 32
  9 21 23 25 14 20 6 26 24 8 17 25 16 31 29 23 0 11 15 9 10
  16 14 21 28 23 11 17 31 13 4 7 14 7 42 28 19 11 0 5 3 21
  21 17 25 26 28 14 21 36 11 7 2 13 2 46 32 22 15 5 0 8 25
  13 13 18 28 20 11 15 28 15 4 10 17 10 40 25 17 9 3 8 0 19
  12 31 29 27 10 30 4 27 35 18 27 36 26 21 33 32 10 21 25 19 0`);
const NARROW_WINDOWS = LABELED_LINES(`
  62 68\n 181 205\n 306 324\n 214 217\n 51 61\n 102 129\n 175 186\n 250 263\n 3 23\n 21 49\n 79 90\n 78 96\n 140 154
  354 386\n 42 63\n 2 13\n 24 42\n 20 33\n 9 21\n 275 300`);

const narrow: PublishedStatement = {
  row: "elsewhere.13",
  says: "20 stops with narrow windows: the published order's 378 of travel and 387 until the return",
  source: "Dumas et al. 1995, as printed in the OR-Tools user's manual, chapter 9",
  status: "seen-2nd",
  holds: () => {
    const column = (index: number) => NARROW_TRAVEL.map((row) => row[index] ?? NaN);
    const first = [0, 19, ...column(0)];
    const second = [19, 0, ...column(1)];
    const travel = travelOf([first, second, ...NARROW_TRAVEL].map((row) => row.map((minutes) => minutes * 60)));
    const stops = NARROW_WINDOWS.map(([fromMinute = NaN, toMinute = NaN], index) => stopAt(index + 1, { windows: [{ fromMinute, toMinute }] }));
    const question = dayOf(stops, { dayEndSeconds: 408 * 60 });
    const route = answerOf(question, travel);
    expect(checkDayRoute(question, travel, route)).toEqual([]);
    expect(route.leftOut).toEqual([]);
    // The published order counts the depot as 1, so its numbers are ours and one.
    const published = [17, 10, 20, 18, 19, 11, 6, 16, 2, 12, 13, 7, 14, 8, 3, 5, 9, 21, 4, 15].map((place) => `stop ${place - 1}`);
    const standing = answerOf(question, travel, published);
    expect([standing.totals.driveSeconds / 60, standing.returnSeconds / 60]).toEqual([378, 387]);
    expect(orderOf(standing)).toEqual(published);
    expect(route.totals.driveSeconds / 60).toBe(378);
  },
};

export const ROUTE_CHECKS: readonly PublishedEntry[] = [...rows, cities, narrow];
