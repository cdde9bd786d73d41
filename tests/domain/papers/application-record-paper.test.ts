import { describe, expect, test } from "vitest";
import { amountWords, productFields, recordFieldGroups } from "#domain/papers/application-record-paper";
import { wordsOf } from "#domain/papers/paper";
import { RECORD } from "../../support/sample-visit-papers";

describe("amountWords", () => {
  test.each([
    [{ kind: "measured", text: "8.1 lb", by: "weight" } as const, "8.1 lb, measured by weight"],
    [{ kind: "as-planned", text: "8.1 lb" } as const, "8.1 lb, as planned, not measured"],
    [{ kind: "not-recorded" } as const, "not recorded"],
  ])("%o reads %j", (amount, words) => {
    expect(amountWords(amount)).toBe(words);
  });
});

describe("recordFieldGroups", () => {
  const fields = recordFieldGroups(RECORD.elements).flatMap((group) => group.fields);

  test("has every element of the record once, with a label of its own", () => {
    expect(fields).toHaveLength(Object.keys(RECORD.elements).length);
    expect(new Set(fields.map(({ label }) => label)).size).toBe(fields.length);
  });

  test("says of what is missing in which way it is missing", () => {
    const valueOf = (label: string) => fields.filter((field) => field.label === label).map(({ value }) => wordsOf(value));
    expect(valueOf("Other weather")).toEqual(["not taken"]);
    expect(valueOf("County")).toEqual(["not recorded"]);
    expect(valueOf("Wind speed")).toEqual(["5 mph"]);
  });
});

describe("productFields", () => {
  test("begins with the amount and how it is known, and sets codes apart", () => {
    const [product] = RECORD.products;
    if (product === undefined) throw new Error("the sample has a product");
    const fields = productFields(product);
    expect(fields[0]).toEqual({ label: "Total product", value: { kind: "said", text: "12.0 fl oz, measured by flow meter" } });
    expect(fields.filter(({ isCode }) => isCode === true).map(({ label }) => label)).toEqual(["EPA registration number", "Lot"]);
  });
});
