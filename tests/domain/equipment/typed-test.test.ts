import { describe, expect, test } from "vitest";
import { readAmount, readLines, readMinutes, readPressure, readSeconds, readSpeed, readSprayerTest, readSpreaderTest, readTypedTable, typedLines, type TypedSprayerTest } from "#domain/equipment/typed-test";
import { accept, badInput } from "#domain/foundation/outcome";
import { of } from "#domain/quantities/quantity";
import { saying } from "../../support/said";

const COURSE = { caught: "20 fl oz", caughtSeconds: "30", tipSize: "", course: "100 ft", courseSeconds: "22\n23" } as const;

test("lines hold one thing each; empty ones are none", () => {
  expect(typedLines(" 58 \r\n\n60\n ")).toEqual(["58", "60"]);
  expect(readLines("times", "58\n60", accept)).toEqual(accept(["58", "60"]));
  expect(readLines("times", "\n \n", accept)).toMatchObject({ ok: false, refusal: { kind: "missing-fact", field: "times" } });
  expect(readLines("times", "1\n".repeat(41), accept)).toMatchObject({ ok: false, refusal: { found: "41 lines" } });
  expect(readLines("times", "1\n".repeat(40), accept)).toMatchObject({ ok: true });
});

test("a table has three columns and at most 100 rows; its reader says which row it refuses", () => {
  const read = (text: string) =>
    readTypedTable<string>("rows", text, ({ line, parts, before }) => (parts === undefined ? badInput("rows", line, "three", "three") : accept(`${parts.join("|")} after ${String(before.length)}`)));
  expect(read("")).toEqual(accept([]));
  expect(read("a; b ;c\n\n d;e;f")).toEqual(accept(["a|b|c after 0", "d|e|f after 1"]));
  for (const line of ["a; b", "a; ; c", "a; b; c; d"]) expect(read(`x;y;z\n${line}`)).toMatchObject({ ok: false, refusal: { found: line } });
  expect(read("a;b;c\n".repeat(100))).toMatchObject({ ok: true });
  expect(read("a;b;c\n".repeat(101))).toMatchObject({ ok: false, refusal: { found: "101", allowed: "up to 100 lines" } });
});

test("an amount is of its dimension and more than nothing", () => {
  expect(readAmount("area", "1,000 sq ft", "area")).toEqual(accept(of("sq ft", 1000n)));
  expect(readAmount("swath", "6 ft 6 in", "length")).toEqual(accept(of("ft", "6.5")));
  expect(readAmount("caught", "0 gal", "volume")).toMatchObject({ refusal: { sentence: saying("more than nothing") } });
  expect(readAmount("caught", "3 lb", "volume")).toMatchObject({ ok: false, refusal: { field: "caught" } });
});

test.each([["62", 62], ["62.5 s", 62.5], ["1 sec", 1], ["7200 seconds", 7200]])("%s is a time", (text, seconds) => {
  expect(readSeconds("times", text)).toEqual(accept(seconds));
});

test.each(["0", "0.9", "7201", "a minute", ""])("%s is no time", (text) => {
  expect(readSeconds("times", text)).toMatchObject({ ok: false, refusal: { field: "times" } });
});

test("a pressure lies from 1 to 1,000 psi", () => {
  expect(readPressure("pressure", "40 psi")).toEqual(accept(40));
  for (const text of ["0", "1001", "low"]) expect(readPressure("pressure", text)).toMatchObject({ ok: false });
});

test("units as phones write them are read, and others of the same thing are refused by naming the one wanted", () => {
  expect([readSeconds("times", "45 secs"), readSeconds("times", "45 Sec."), readMinutes("minutes", "3 mins"), readSpeed("speed", "3 MPH"), readPressure("pressure", "40 PSI")]).toEqual([accept(45), accept(45), accept(3), accept(3), accept(40)]);
  expect(readPressure("pressure", "3 bar")).toMatchObject({ refusal: { field: "pressure", sentence: '"3 bar" is in bar; here it takes psi.' } });
  expect(readSeconds("times", "1 min")).toMatchObject({ refusal: { sentence: '"1 min" is in min; here it takes seconds.' } });
  expect(readMinutes("minutes", "90 s")).toMatchObject({ refusal: { sentence: '"90 s" is in s; here it takes minutes.' } });
  expect(readSpeed("speed", "5 km/h")).toMatchObject({ refusal: { sentence: '"5 km/h" is in km/h; here it takes mph.' } });
});

describe("a sprayer's test", () => {
  test("over a timed area is a gun's: each line of the catch and of the times is a repeat", () => {
    const typed = { method: "timed-area", caught: "1 gal\n1.1 gal", caughtSeconds: "30", area: "1,000 sq ft", areaSeconds: "58\n60\n62" } as const;
    expect(readSprayerTest(typed, 40)).toMatchObject({
      ok: true,
      value: {
        method: "gun",
        catches: [{ nozzle: "The tip", volume: of("gal", 1n), seconds: 30 }, { nozzle: "The tip", volume: of("gal", "1.1"), seconds: 30 }],
        coverings: [{ area: of("sq ft", 1000n), seconds: 58 }, { seconds: 60 }, { seconds: 62 }],
      },
    });
  });

  test("over a timed course is a backpack's, with the nominal flow of a known size to hold the catch against", () => {
    const typed = { method: "timed-course", ...COURSE, swath: "4 ft" } as const;
    const read = readSprayerTest(typed, 40);
    expect(read).toMatchObject({ ok: true, value: { method: "backpack", swath: of("ft", 4n), pace: { course: of("ft", 100n), seconds: [22, 23] } } });
    expect(read).not.toHaveProperty("value.nominal");
    expect(readSprayerTest({ ...typed, tipSize: "04" }, 40)).toMatchObject({ value: { nominal: { pressurePsi: 40, rated: { statedBy: saying("04") } } } });
  });

  test("of a boom has one nozzle a line", () => {
    const typed = { method: "boom", ...COURSE, caught: "20 fl oz\n21 fl oz", nozzleSpacing: "20 in" } as const;
    expect(readSprayerTest(typed, 40)).toMatchObject({ value: { method: "boom", catches: [{ nozzle: "Nozzle 1" }, { nozzle: "Nozzle 2" }] } });
  });

  test("by what an area took has one run a line", () => {
    expect(readSprayerTest({ method: "small-area", area: "500 sq ft", used: "1 gal\n1.1 gal" }, 40)).toMatchObject({
      value: { method: "small-area", runs: [{ area: of("sq ft", 500n), volume: of("gal", 1n) }, { volume: of("gal", "1.1") }] },
    });
  });

  const AREA = { method: "timed-area", caught: "1 gal", caughtSeconds: "30", area: "1,000 sq ft", areaSeconds: "58" } as const;
  test.each<[string, TypedSprayerTest]>([
    ["caught", { ...AREA, caught: "1" }],
    ["caughtSeconds", { ...AREA, caughtSeconds: "0" }],
    ["area", { ...AREA, area: "0 sq ft" }],
    ["areaSeconds", { ...AREA, areaSeconds: "58\nlong" }],
    ["swath", { method: "timed-course", ...COURSE, swath: "wide" }],
    ["course", { method: "timed-course", ...COURSE, swath: "4 ft", course: "" }],
    ["courseSeconds", { method: "boom", ...COURSE, nozzleSpacing: "20 in", courseSeconds: "" }],
    ["nozzleSpacing", { method: "boom", ...COURSE, nozzleSpacing: "20" }],
    ["area", { method: "small-area", area: "a yard", used: "1 gal" }],
    ["used", { method: "small-area", area: "500 sq ft", used: "" }],
  ])("is refused at %s", (field, typed) => expect(readSprayerTest(typed, 40)).toMatchObject({ ok: false, refusal: { field } }));
});

test("a spreader's test has one run a line over the same area, and is refused by the field", () => {
  const typed = { area: "1,000 sq ft", collected: "2.9 lb\n3.1 lb" };
  const area = of("sq ft", 1000n);
  expect(readSpreaderTest(typed)).toEqual(accept([{ collected: of("lb", "2.9"), area }, { collected: of("lb", "3.1"), area }]));
  expect(readSpreaderTest({ ...typed, area: "" })).toMatchObject({ refusal: { field: "area" } });
  expect(readSpreaderTest({ ...typed, collected: "3 gal" })).toMatchObject({ refusal: { field: "collected" } });
});
