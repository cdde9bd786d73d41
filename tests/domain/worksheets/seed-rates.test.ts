import { expect, test } from "vitest";
import { publishedRates, SEED_USES } from "#domain/worksheets/seed-rates";

const rowsOf = (...asked: Parameters<typeof publishedRates>) => publishedRates(...asked).rows.map((row) => row.join(" | "));

test("on bare ground the rates are those that the field takes, by what they count", () => {
  expect(rowsOf("seed from the bag", "bare ground")).toContain("tall fescue | 6 to 8 | University of Nebraska-Lincoln");
  expect(rowsOf("seed from the bag", "bare ground")).not.toContain("zoysiagrass | 1 to 2 | LSU AgCenter");
  expect(rowsOf("pure live seed", "bare ground")).toContain("zoysiagrass | 1 to 2 | LSU AgCenter");
  expect(rowsOf("pure live seed", "bare ground").length + rowsOf("seed from the bag", "bare ground").length).toBe(16);
});

test("for overseeding they are the same rates, with the half that the sheet makes of them beside", () => {
  expect(rowsOf("seed from the bag", "overseeding")).toContain("tall fescue | 6 to 8 | 3 to 4 | University of Nebraska-Lincoln");
  expect(rowsOf("seed from the bag", "overseeding")).toContain("Kentucky bluegrass | 2 to 3 | 1 to 1.5 | University of Nebraska-Lincoln");
});

test("each row has a cell for each column, and the caption says what is counted", () => {
  for (const counts of ["pure live seed", "seed from the bag"] as const) for (const use of SEED_USES) {
    const { caption, columns, rows } = publishedRates(counts, use);
    expect(caption).toBe(`Published rates on bare ground, ${counts}${use === "overseeding" ? ", and half of them for overseeding" : ""}`);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([columns.length]));
  }
});
