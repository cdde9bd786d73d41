import { expect, test } from "vitest";
import { readLabelOnFile } from "#domain/label/label-on-file";
import { readLabelText } from "#domain/label/label-text";
import { BrokenInvariant } from "#domain/foundation/invariant";
import { A_PREVENTER_TEXT, aFeedText, aUseText } from "../../support/label-texts";
import { saying } from "../../support/said";

test("a label that reads today is read as it is", () => {
  for (const text of [A_PREVENTER_TEXT, aFeedText()]) {
    expect(readLabelOnFile(text)).toEqual({ facts: (readLabelText(text) as { value: unknown }).value, complaints: {} });
  }
});

test("what is refused today has been read by nobody, and the rest stands", () => {
  const text = { ...aFeedText({ signalWord: "POISON" }), uses: [aUseText({ seasonLimits: "2,4-D; 2 lb per acre; season; 1 lb at once", leastDaysBetween: "28 days", highestWind: "10 mph" })] };
  const { facts, complaints } = readLabelOnFile(text);
  expect(facts).toMatchObject({ signalWord: "unknown", formulation: "dry granule", uses: [{ useName: "Established lawns", seasonLimits: "unknown", leastDaysBetween: { days: 28 } }] });
  expect(complaints).toEqual({ "general.signalWord": saying("Write one of"), "uses.0.seasonLimits": saying("has more than a name") });
});

test("a use whose rate can't be read falls out, and the others stand", () => {
  const text = { ...aFeedText(), uses: [aUseText({ useName: "Spring", rates: "11/2 lb per 1,000 sq ft" }), aUseText({ useName: "Fall" }), aUseText({ useName: "fall" })] };
  const { facts, complaints } = readLabelOnFile(text);
  expect(facts.uses.map(({ useName }) => useName)).toEqual(["Fall"]);
  expect(complaints).toEqual({ "uses.0.rates": saying("Write 1 1/2, or 5.5."), "uses.2.useName": saying("this name already") });
});

test("a product that can't be read without a fact has never been taken", () => {
  const broken = { ...aFeedText(), general: { ...aFeedText().general, formulation: "" } };
  expect(readLabelText(broken).ok).toBe(false);
  expect(() => readLabelOnFile(broken)).toThrow(BrokenInvariant);
});
