// Every published row that this project knows is held by a check or left out for a reason that is named, and no check
// names a row that isn't there.
import { readdirSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { rowsNamedBy } from "../support/published-check";
import { type ReferenceRow } from "./reference-row";
import { CHECK_TABLES, REFERENCE_ROWS } from "./reference-rows";

/** How many published rows each section has: tables line by line, formulas and statements one by one. */
const ROWS_BY_SECTION: Readonly<Record<string, number>> = {
  fertilizer: 41,
  "nitrogen-by-month": 16,
  iron: 9,
  "active-ingredient": 4,
  sprayers: 32,
  nozzles: 8,
  flow: 6,
  hoses: 8,
  spreaders: 11,
  "spread-uniformity": 7,
  mixing: 17,
  units: 16,
  "units-printed": 43,
  "degree-days": 25,
  growth: 14,
  "plant-nutrition": 5,
  disease: 19,
  water: 39,
  infiltration: 8,
  "spray-window": 15,
  "wet-bulb-tables": 14,
  "weather-limits": 19,
  areas: 22,
  care: 24,
  lime: 39,
  "lime-aeration": 8,
  sand: 6,
  misprints: 14,
  "not-found": 16,
  elsewhere: 14,
};

const checks = Object.values(CHECK_TABLES).flat();

interface Count {
  readonly rows: readonly ReferenceRow[];
  readonly named: readonly string[];
}

/** What is wrong with a list of rows and the rows that checks name, in words; nothing where all is well. */
function complaintsOf({ rows, named }: Count): readonly string[] {
  const known = new Set(rows.map(({ id }) => id));
  const held = new Set(named);
  return [
    ...rows.filter(({ id, omission }) => omission === undefined && !held.has(id)).map(({ id }) => `${id} has neither check nor omission`),
    ...rows.filter(({ id, omission }) => omission !== undefined && held.has(id)).map(({ id }) => `${id} is left out and yet checked`),
    ...[...held].filter((id) => !known.has(id)).map((id) => `a check names ${id}, which is no row`),
  ];
}

describe("published rows", () => {
  test("each is checked or left out for a reason, and each check names known rows", () => {
    expect(complaintsOf({ rows: REFERENCE_ROWS, named: checks.flatMap(rowsNamedBy) })).toEqual([]);
  });

  test("a missing check, an unknown row and a check of what is left out would be noticed", () => {
    const row = { words: "a row", source: "a page", status: "seen" } as const;
    const rows = [{ ...row, id: "one.1" }, { ...row, id: "one.2", omission: "a statement" }];
    expect(complaintsOf({ rows, named: ["one.1"] })).toEqual([]);
    expect(complaintsOf({ rows, named: [] })).toEqual(["one.1 has neither check nor omission"]);
    expect(complaintsOf({ rows, named: ["one.1", "one.2", "one.3"] })).toEqual(["one.2 is left out and yet checked", "a check names one.3, which is no row"]);
  });

  test("there are as many as each section has, numbered without a gap", () => {
    const expected = Object.entries(ROWS_BY_SECTION).flatMap(([section, count]) => Array.from({ length: count }, (_, place) => `${section}.${String(place + 1)}`));
    expect(REFERENCE_ROWS.map(({ id }) => id).toSorted()).toEqual(expected.toSorted());
  });

  test("each has words and a source, and a reason where it is left out", () => {
    for (const { id, words, source, omission = "none needed" } of REFERENCE_ROWS) {
      expect([words, source, omission].map((text) => text.trim() === ""), id).toEqual([false, false, false]);
    }
  });

  test("what is known from memory is marked so in its checks too", () => {
    const fromMemory = new Set(REFERENCE_ROWS.filter(({ status }) => status === "memory").map(({ id }) => id));
    const seenAfterAll = checks.filter((check) => check.status.startsWith("seen") && rowsNamedBy(check).some((id) => fromMemory.has(id)));
    expect(seenAfterAll.map(rowsNamedBy)).toEqual([]);
  });

  test("every table of checks is counted", () => {
    const files = readdirSync(new URL("checks", import.meta.url)).length;
    expect(Object.keys(CHECK_TABLES)).toHaveLength(files);
    for (const [name, table] of Object.entries(CHECK_TABLES)) expect(table.length, name).toBeGreaterThan(0);
  });
});
