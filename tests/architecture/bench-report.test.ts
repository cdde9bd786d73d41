// What the bench makes of its figures. The figures themselves are measured by `npm run bench`, never in a test.
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test } from "vitest";
import { type Row, jsonOf, median, rowOf, rowsOfRounds, tableOf } from "../../scripts/bench/report.mjs";
import { packageMegabytes } from "../../scripts/bench/size.mjs";

describe("the median", () => {
  test.each([
    [[3], 3],
    [[9, 1, 5], 5],
    [[10, 2, 4, 100], 7],
    [[100, 20, 3], 20],
  ])("of %j is %d", (values, expected) => {
    expect(median(values)).toBe(expected);
  });

  test("of nothing is refused, and the values stay in their order", () => {
    const values = [2, 1];
    median(values);
    expect(values).toEqual([2, 1]);
    expect(() => median([])).toThrow("no median");
  });
});

describe("rows of rounds", () => {
  test("have ratios of the same round: a machine that slows down for a round changes none", () => {
    const rounds = [
      { empty: 100, page: 50 },
      { empty: 10, page: 5 },
      { empty: 40, page: 20 },
    ];
    expect(rowsOfRounds("requests/s", "empty", rounds)).toEqual([
      { name: "empty", value: 40, unit: "requests/s", baseline: null, ratio: null },
      { name: "page", value: 20, unit: "requests/s", baseline: "empty", ratio: 0.5 },
    ]);
  });

  test("take the middle ratio, which need not be the ratio of the middle values", () => {
    const rounds = [
      { empty: 1, page: 3 },
      { empty: 2, page: 2 },
      { empty: 4, page: 8 },
    ];
    expect(rowsOfRounds("s", "empty", rounds)[1]).toMatchObject({ value: 3, ratio: 2 });
  });

  test("refuse a round that lacks a figure", () => {
    expect(() => rowsOfRounds("s", "empty", [{ empty: 1, page: 1 }, { empty: 1 }])).toThrow('no figure for "page"');
    expect(() => rowsOfRounds("s", "blank", [{ empty: 1 }])).toThrow('no figure for "blank"');
  });
});

const bare = rowOf("bare", 0.05, "s");
const rows: Row[] = [bare, rowOf("a start", 12.345, "s", bare), rowOf("statements", 5, "statements")];

test("a single row names what it is measured against, in the same unit only", () => {
  expect(rows[1]).toEqual({ name: "a start", value: 12.345, unit: "s", baseline: "bare", ratio: 246.9 });
  expect(() => rowOf("size", 1, "MB", bare)).toThrow("size is in MB and bare in s");
});

test("the table lines up and leaves out what is not there", () => {
  expect(tableOf(rows)).toBe(
    [
      "            measured              ratio  to",
      "bare            0.05  s",
      "a start         12.3  s             247  bare",
      "statements      5.00  statements",
      "",
    ].join("\n"),
  );
});

describe("the JSON", () => {
  test("holds every row whole, with the keys in one order", () => {
    expect(JSON.parse(jsonOf(rows))).toEqual(rows);
    const text = jsonOf([{ ratio: null, baseline: null, unit: "s", value: 1, name: "turned about" }]);
    expect(text.match(/"\w+"(?=:)/g)).toEqual(['"name"', '"value"', '"unit"', '"baseline"', '"ratio"']);
    expect(text.endsWith("]\n")).toBe(true);
  });

  test.each([Number.NaN, Number.POSITIVE_INFINITY])("refuses %d, which JSON would write as null", (value) => {
    expect(() => jsonOf([{ ...bare, value }])).toThrow('"bare" was not measured');
    expect(() => jsonOf([{ ...bare, ratio: value }])).toThrow('"bare" was not measured');
  });
});

describe("the weight of packages", () => {
  let folder = "";
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  test("counts each package once, test tools apart, and follows no link", () => {
    folder = mkdtempSync(join(tmpdir(), "halfpass-weight-"));
    const put = (path: string, kilobytes: number) => {
      mkdirSync(join(folder, path), { recursive: true });
      writeFileSync(join(folder, path, "file"), "x".repeat(kilobytes * 1000));
    };
    put("node_modules/one", 30);
    put("node_modules/one/lib", 20);
    put("node_modules/one/node_modules/inner", 10);
    put("node_modules/tool", 7);
    symlinkSync(join(folder, "node_modules", "one"), join(folder, "node_modules", "tool", "link"));
    const packages = {
      "": {},
      "node_modules/one": {},
      "node_modules/one/node_modules/inner": {},
      "node_modules/tool": { dev: true },
      "node_modules/for-another-machine": { optional: true },
    };
    writeFileSync(join(folder, "package-lock.json"), JSON.stringify({ packages }));
    const { product, all } = packageMegabytes(folder);
    expect(product).toBeCloseTo(0.06, 9);
    expect(all).toBeCloseTo(0.067, 9);
  });
});
