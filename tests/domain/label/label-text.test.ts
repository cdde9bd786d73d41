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

test("or of the acid of one, which its name begins with or which stands beside it", () => {
  const [use] = A_PREVENTER_TEXT.uses;
  const complaints = (activeIngredients: string) => {
    const read = readLabelText({ ...A_PREVENTER_TEXT, general: { ...A_PREVENTER_TEXT.general, activeIngredients }, uses: [aUseText({ ...use, seasonLimits: "2,4-D; 2 lb per acre; calendar year" })] });
    return read.ok ? [] : Object.keys(read.refusal);
  };
  expect(complaints("2,4-D, dimethylamine salt; 46.3 %; Group 4 herbicide")).toEqual([]);
  expect(complaints("Dimethylamine salt; 46.3 %; Group 4 herbicide; 2,4-D, acid equivalent 38.4 %")).toEqual([]);
  expect(complaints("Dimethylamine salt of 2,4-D; 46.3 %; Group 4 herbicide")).toEqual(["uses.0.seasonLimits"]);
  expect(complaints("2,4-DB; 46.3 %; Group 4 herbicide")).toEqual(["uses.0.seasonLimits"]);
});
