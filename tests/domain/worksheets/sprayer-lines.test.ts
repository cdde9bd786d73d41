import { expect, test } from "vitest";
import { BOOM_EXAMPLE, boomWorksheet, GUN_EXAMPLE, gunWorksheet, SMALL_AREA_EXAMPLE, smallAreaWorksheet } from "#domain/worksheets/sprayer";
import { stepsOf, worked } from "../../support/worked";

test("a boom: flow, feet and ground in a minute, and the spray over that ground", () => {
  expect(stepsOf(boomWorksheet(BOOM_EXAMPLE.typed)).slice(0, -1)).toEqual([
    "Flow in a minute: 101 fl oz ÷ 60 s × 60 s = 101 fl oz.",
    "In gallons: 101 fl oz ÷ 128 fl oz × 1 gal = 0.78906 gal.",
    "Feet in a minute: 264 ft ÷ 60 s × 60 s = 264 ft.",
    "Speed, with 88 ft a minute for 1 mph: 264 ft ÷ 88 ft × 1 mph = 3 mph.",
    "Nozzles apart in feet: 18 in ÷ 12 in × 1 ft = 1½ ft.",
    "Covered in a minute: 264 ft × 1½ ft = 396 sq ft.",
    "Rate: 0.78906 gal ÷ 396 sq ft × 1,000 sq ft = 1.9926 gal per 1,000 sq ft.",
  ]);
});

test("a small area, with runs added up and their average", () => {
  const outcome = smallAreaWorksheet({ ...SMALL_AREA_EXAMPLE.typed, area: "300 sq ft", used: "25 fl oz\n27 fl oz" });
  expect(worked(outcome).working.inputs.map(({ figure }) => figure)).toEqual(["300 sq ft", "25 fl oz, 27 fl oz"]);
  expect(stepsOf(outcome).slice(0, 4)).toEqual([
    "All runs: 25 fl oz + 27 fl oz = 52 fl oz.",
    "Average of the 2 runs: 52 fl oz ÷ 2 = 26 fl oz.",
    "In gallons: 26 fl oz ÷ 128 fl oz × 1 gal = 0.20313 gal.",
    "Rate: 0.20313 gal ÷ 300 sq ft × 1,000 sq ft = 0.67708 gal per 1,000 sq ft.",
  ]);
});

test("a gun, with the times averaged, and water for a denser spray", () => {
  expect(stepsOf(gunWorksheet({ ...GUN_EXAMPLE.typed, areaSeconds: "48\n52", density: "specific gravity 1.21" }))).toEqual([
    "Flow in a minute: 1.4 gal ÷ 50 s × 60 s = 1.68 gal.",
    "All times: 48 s + 52 s = 100 s.",
    "Average of the 2 times: 100 s ÷ 2 = 50 s.",
    "On the area: 1.68 gal ÷ 60 s × 50 s = 1.4 gal.",
    "Rate: 1.4 gal ÷ 1,000 sq ft × 1,000 sq ft = 1.4 gal per 1,000 sq ft.",
    "Specific gravity, with 8.3454 lb for a gallon of water: 10.0979 lb ÷ 8.3454 lb = 1.21.",
    "Its root: √ 1.21 = 1.1.",
    "Water was caught, and the spray is denser: 1.4 gal ÷ 1.1 = 1.2727 gal per 1,000 sq ft.",
    "Per acre: 1.2727 gal ÷ 1,000 sq ft × 43,560 sq ft = 55.44 gal per acre.",
  ]);
});
