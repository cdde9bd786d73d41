import PDFDocument from "pdfkit";
import { describe, expect, test } from "vitest";
import { Lettering } from "#adapters/pdf/lettering";
import { type Span, breakSpans } from "#adapters/pdf/line-breaking";

const lettering = new Lettering(new PDFDocument({ autoFirstPage: false }));
const plain = (text: string): Span => ({ text, face: "sans", sizePoints: 10 });
const bold = (text: string): Span => ({ text, face: "bold", sizePoints: 10 });
const linesOf = (spans: readonly Span[], roomPoints: number) =>
  breakSpans(lettering, spans, roomPoints).map(({ pieces }) => pieces.map(({ text }) => text).join("").trimEnd());

describe("breakSpans", () => {
  test("breaks at spaces and loses nothing", () => {
    const text = "Leave the back lawn for today and come again when it has been mown three times.";
    const lines = linesOf([plain(text)], 120);
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(" ")).toBe(text);
  });

  test("has no line wider than its room, whatever the words", () => {
    for (const text of ["W".repeat(90), "a ".repeat(80), `short ${"x".repeat(70)} short`]) {
      for (const { widthPoints } of breakSpans(lettering, [plain(text)], 100)) expect(widthPoints).toBeLessThanOrEqual(100);
    }
  });

  test("keeps a comma with the bold word before it", () => {
    const width = lettering.widthOf("from ", plain("")) + lettering.widthOf("9:12", bold("")) + 1;
    expect(linesOf([plain("from "), bold("9:12"), plain(", then")], width)).toEqual(["from", "9:12,", "then"]);
  });

  test("breaks a word that is too wide after a hyphen, and leaves a number whole that fits on a line of its own", () => {
    expect(linesOf([plain("Hohenlohe-Schillingsberg")], lettering.widthOf("Hohenlohe-Schill", plain("")))).toEqual(["Hohenlohe-", "Schillingsberg"]);
    expect(linesOf([plain("call 317-555-0142")], lettering.widthOf("317-555-0142", plain("")) + 1)).toEqual(["call", "317-555-0142"]);
  });

  test("begins a new line at a line feed and keeps a no-break space", () => {
    expect(linesOf([plain("one\ntwo")], 500)).toEqual(["one", "two"]);
    expect(linesOf([plain("about 12\u00a0fl\u00a0oz")], lettering.widthOf("about 12", plain("")) + 2)).toEqual(["about", "12\u00a0fl\u00a0oz"]);
  });
});
