import { describe, expect, test } from "vitest";
import { arrangeSigns } from "#adapters/pdf/sign-sheet";
import { sheetPoints } from "#adapters/pdf/sheet";

const sign = (widthInches: number, heightInches: number) => ({ widthPoints: widthInches * 72, heightPoints: heightInches * 72 });

describe("arrangeSigns", () => {
  test.each([
    ["4 x 5 in, upright", sign(4, 5), { columns: 2, rows: 2, widthPoints: 612, strips: "above-and-below" }],
    ["5 x 4 in on a lying sheet", sign(5, 4), { columns: 2, rows: 2, widthPoints: 792, strips: "beside" }],
    ["8 x 10 in", sign(8, 10), { columns: 1, rows: 1, widthPoints: 612 }],
  ])("puts on a Letter sheet as many as fit: %s", (_name, size, expected) => {
    expect(arrangeSigns(size, sheetPoints("letter"))).toMatchObject(expected);
  });

  test("leaves the margin that printers need, so that narrow A4 takes fewer", () => {
    const arranged = arrangeSigns(sign(4, 5), sheetPoints("a4"));
    expect(arranged === undefined ? 0 : arranged.columns * arranged.rows).toBe(2);
    expect(Math.min(arranged?.left ?? 0, arranged?.top ?? 0)).toBeGreaterThanOrEqual(14.4);
  });

  test("finds no place for a sign as large as the sheet", () => {
    expect(arrangeSigns(sign(8.5, 11), sheetPoints("letter"))).toBeUndefined();
  });
});
