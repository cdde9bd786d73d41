import { expect, test } from "vitest";
import { readLabelText } from "#domain/label/label-text";
import { useNamed } from "#domain/label/label-facts";
import { A_PREVENTER_TEXT, aFeedText, aUseText } from "../../support/label-texts";

test("a whole label becomes its facts", () => {
  const read = readLabelText(A_PREVENTER_TEXT);
  expect(read.ok && useNamed(read.value, "Crabgrass, spring")?.targets).toEqual(["crabgrass", "goosegrass"]);
});

test("a label without a use is a label", () => {
  expect(readLabelText({ ...aFeedText(), uses: [] })).toMatchObject({ ok: true, value: { uses: [] } });
});

test("each complaint stands at its field, in whichever use", () => {
  const text = { ...aFeedText({ signalWord: "POISON" }), uses: [aUseText(), aUseText({ useName: "Fall", rates: "2 oz per 1,000 sq ft" })] };
  const read = readLabelText(text);
  expect(read.ok ? [] : Object.keys(read.refusal)).toEqual(["general.signalWord", "uses.1.rates"]);
});

test("two uses of one name can't be told apart", () => {
  const read = readLabelText({ ...aFeedText(), uses: [aUseText(), aUseText({ useName: "established LAWNS" })] });
  expect(read.ok ? [] : Object.keys(read.refusal)).toEqual(["uses.1.useName"]);
});

test("a season limit is of an ingredient that the label has", () => {
  const [use] = A_PREVENTER_TEXT.uses;
  const read = readLabelText({ ...A_PREVENTER_TEXT, uses: [aUseText({ ...use, seasonLimits: "Dithiopyr; 0.5 lb per acre; calendar year" })] });
  expect(read.ok ? [] : Object.keys(read.refusal)).toEqual(["uses.0.seasonLimits"]);
});
