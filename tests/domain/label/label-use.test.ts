import { expect, test } from "vitest";
import { readKeptApart, readLabelUse, readMostApplications, readSeasonLimits } from "#domain/label/label-use";
import { of } from "#domain/quantities/quantity";
import { rateOf } from "#domain/quantities/rate";
import { A_PREVENTER_TEXT, aUseText } from "../../support/label-texts";
const pounds = (value: string) => rateOf("product-mass-per-area", value, "lb per 1,000 sq ft");

test("season limits, one a line, each with its period", () => {
  expect(readSeasonLimits("Prodiamine; 1.5 lb per acre; per calendar year\nDithiopyr; 0.5 lb per acre; 12 months")).toMatchObject({
    value: { limits: [{ activeIngredient: "Prodiamine", period: "calendar-year" }, { activeIngredient: "Dithiopyr", period: "12-months" }] },
  });
  for (const value of ["Prodiamine; 1.5 lb per acre", "Prodiamine; 1.5 lb; calendar year", "1.5 lb per acre; calendar year"]) expect(readSeasonLimits(value).ok, value).toBe(false);
});

test("a season limit with a fourth part is refused, and not read without it", () => {
  for (const line of ["2,4-D; 2 lb per acre; season; no more than 1 lb per acre at once", "2,4-D; 2 lb per acre; season; ; 1 lb at once"]) {
    expect(readSeasonLimits(line)).toMatchObject({ ok: false, refusal: expect.stringMatching(/has more than a name, how much and the period/u) as unknown });
  }
  expect(readSeasonLimits("2,4-D; 2 lb per acre; season;").ok).toBe(true);
});

test("a season without dates is a period of its own", () => {
  expect(readSeasonLimits("Prodiamine; 1.5 lb per acre; per season\nDithiopyr; 0.5 lb per acre; growing season")).toMatchObject({ value: { limits: [{ period: "season" }, { period: "season" }] } });
});

test("how often it may go down, in which period", () => {
  const read = (value: string) => {
    const found = readMostApplications(value);
    return found.ok ? `${String(found.value.count)} ${found.value.period}` : found.refusal;
  };
  expect(["2 per calendar year", "no more than 2 applications per year", "3 in 12 months", "1 application per growing season", "At most 2 times in any 12 months", "2 each calendar year"].map(read)).toEqual([
    "2 calendar-year", "2 season", "3 12-months", "1 season", "2 12-months", "2 calendar-year",
  ]);
  for (const value of ["2", "0 per calendar year", "2 per month", "two per calendar year", "2.5 per calendar year", "per calendar year"]) expect(read(value), value).toMatch(/2 per calendar year, 3 in 12 months/u);
});

test("what a product is kept apart from, one a line: a tank, or days", () => {
  expect(readKeptApart("Iron; tank\nLime; 14 days\nall others; 1 week")).toMatchObject({
    value: { from: [{ from: "Iron", apart: "tank" }, { from: "Lime", apart: { days: 14 } }, { from: "all others", apart: { days: 7 } }] },
  });
  for (const value of ["Iron", "Iron; never", "; tank", "Iron; 0 days", "Iron; 2 hours", "Iron; tank; 3 days"]) expect(readKeptApart(value).ok, value).toBe(false);
});

test("a kind of things that is neither a name nor a class known here is refused with the words that are", () => {
  for (const what of ["Alkaline materials", "Phenoxy herbicides", "adjuvants", "organophosphates", "all others except iron", "2,4-D esters"]) {
    expect(readKeptApart(`${what}; tank`), what).toMatchObject({ ok: false, refusal: expect.stringMatching(/one of these: fertilizers, liquid fertilizers/u) as unknown });
  }
  for (const what of ["Harrowgate 32", "Liquid fertilizer", "Other herbicides", "any other product", "potassium salts of fatty acids"]) expect(readKeptApart(`${what}; tank`).ok, what).toBe(true);
});

test("flowers and bees: not in bloom with the label's own words, none, or unread", () => {
  const read = (bloomAndBees: string) => {
    const use = readLabelUse("Wardlow", aUseText({ bloomAndBees }));
    return use.ok ? use.value.bloomAndBees : use.refusal["bloomAndBees"];
  };
  expect(read('not in bloom "Do not apply to blooming weeds."')).toMatchObject({ labelWords: "Do not apply to blooming weeds.", basis: "label" });
  expect(read("none")).toBe("none");
  expect(read("")).toBe("unknown");
  expect(read("careful")).toMatch(/not in bloom/u);
});

test("distance to water: with the label's source, none, or unread; what can't be read is refused at its field", () => {
  const read = (distanceToWater: string) => {
    const use = readLabelUse("Wardlow", aUseText({ distanceToWater }));
    return use.ok ? use.value.distanceToWater : use.refusal["distanceToWater"];
  };
  expect(read('25 ft "Keep 25 feet from ponds."')).toMatchObject({ withDeflector: of("ft", 25n), otherwise: of("ft", 25n), basis: "label" });
  expect(read("none")).toBe("none");
  expect(read("")).toBe("unknown");
  expect(read("far away")).toMatch(/25 ft/u);
});

test("droplets: with the label's source, none, or unread; what is no class is refused at its field", () => {
  const read = (droplets: string) => {
    const use = readLabelUse("Wardlow", aUseText({ droplets }));
    return use.ok ? use.value.droplets : use.refusal["droplets"];
  };
  expect(read('medium or coarser "Apply as a medium or coarser spray."')).toEqual({ finest: "M", basis: "label", source: "label of Wardlow" });
  expect(read("none")).toBe("none");
  expect(read("")).toBe("unknown");
  expect(read("big ones")).toMatch(/no droplet class/u);
});

test("a whole use: what is stated names the label and its section", () => {
  const [text] = A_PREVENTER_TEXT.uses;
  const read = readLabelUse("Wardlow 19-0-7", aUseText(text));
  expect(read).toMatchObject({
    value: {
      useName: "Crabgrass, spring",
      serviceType: "grassy weed control",
      targets: ["crabgrass", "goosegrass"],
      grasses: ["Kentucky bluegrass", "tall fescue"],
      rates: { basis: "product-mass-per-area", low: pounds("2.5"), high: pounds("4") },
      carrier: "none",
      mostApplications: { count: 2, period: "calendar-year", basis: "label" },
      leastDaysBetween: { days: 60, basis: "label", source: "label of Wardlow 19-0-7, page 2" },
      stainsHardSurfaces: false,
      weather: { productName: "Wardlow 19-0-7", highestTemperature: { limitF: 90, reaching: "allowed", source: "label of Wardlow 19-0-7, page 2" } },
      aftercare: { productName: "Wardlow 19-0-7" },
    },
  });
});

test("a use of which only the rate is read: everything else is unknown, nothing is assumed", () => {
  const read = readLabelUse("Greenmere", aUseText());
  expect(read).toMatchObject({
    value: { targets: [], grasses: "unknown", carrier: "unknown", leastDaysBetween: "unknown", mostApplications: "unknown", seasonLimits: "unknown", stainsHardSurfaces: "unknown", weather: { soil: "unknown" } },
  });
});

test("complaints of all parts come together", () => {
  const read = readLabelUse("Greenmere", aUseText({ useName: "", rates: "2 oz per 1,000 sq ft", grasses: "moss", targets: "", highestWind: "10", wateringIn: "soon", serviceType: "mowing", leastDaysBetween: "1 hour" }));
  expect(read.ok ? [] : Object.keys(read.refusal).sort()).toEqual(["grasses", "highestWind", "leastDaysBetween", "rates", "serviceType", "targets", "useName", "wateringIn"]);
});
