import { expect, test } from "vitest";
import { NOTICE_PARTS } from "#domain/papers/customer-notice";
import { noticeLawOf, signLawOf } from "#domain/papers/laws-of-papers";
import { packOf } from "#domain/rules/packs-on-file";
import { type RulePack } from "#domain/rules/rule-pack";

function packWith(facts: Partial<RulePack["facts"]>): RulePack {
  const pack = packOf("IN");
  if (pack === undefined) throw new Error("the pack of Indiana is on file");
  return { ...pack, facts: { ...pack.facts, ...facts } };
}

test("Indiana's sign: at least 4 x 5 in either way, letters of 3/8 in, its own words", () => {
  expect(signLawOf("IN", packOf("IN"))).toMatchObject({
    ok: true,
    value: { sidesInches: [4, 5], orientation: "any", sizeIs: "at-least", leastLetterHeightInches: 0.375, phrases: [{ kind: "words", text: "LAWN CARE APPLICATION" }, { kind: "words", text: "KEEP OFF THE GRASS" }] },
  });
});

test("Illinois's sign: exactly 4 x 5 in, with the business's name and phone in their places", () => {
  const law = signLawOf("IL", packOf("IL"));
  expect(law).toMatchObject({ ok: true, value: { sizeIs: "exactly", jurisdiction: "Illinois" } });
  expect(law.ok && law.value.phrases.slice(-2)).toEqual([{ kind: "company-name" }, { kind: "company-phone" }]);
});

test("a landscape sign has its long side first, and feet are twelve inches", () => {
  const rule = packOf("IN")?.facts["posting-sign"];
  if (rule?.onFile !== true) throw new Error("the sign of Indiana is on file");
  const lying = packWith({ "posting-sign": { ...rule, value: { ...rule.value, orientation: "landscape", longSide: { value: "1", unit: "ft" } } } });
  expect(signLawOf("IN", lying)).toMatchObject({ ok: true, value: { sidesInches: [12, 4], orientation: "as-given" } });
  const odd = packWith({ "posting-sign": { ...rule, value: { ...rule.value, words: ["CALL {phone}"] } } });
  expect(signLawOf("IN", odd)).toMatchObject({ ok: false, refusal: { kind: "bad-input", found: "CALL {phone}" } });
});

test("a state without the rule has no sign and no notice law", () => {
  expect(signLawOf("OH", undefined)).toMatchObject({ ok: false, refusal: { kind: "missing-fact" } });
  expect(noticeLawOf("OH", undefined)).toMatchObject({ kind: "not-on-file", jurisdiction: "Ohio" });
  expect(noticeLawOf("IL", packOf("IL"))).toMatchObject({ kind: "not-on-file", citation: "415 ILCS 65/3(c) to (f)" });
});

test("Indiana's notice asks for every part, and words the marker's removal as its sign rule does", () => {
  const law = noticeLawOf("IN", packOf("IN"));
  expect(law.kind === "on-file" && [...law.required].sort()).toEqual([...NOTICE_PARTS].sort());
  expect(law).toMatchObject({ markerRemoval: "Please remove the lawn marker no sooner than the day following the application." });
});

test("an element that the paper has no place for makes the law one that is not on file", () => {
  const pack = packWith({ "customer-statement": { onFile: true, citation: "a rule", standing: "read", value: ["the color of the truck"] } });
  expect(noticeLawOf("IN", pack)).toMatchObject({ kind: "not-on-file", missing: expect.stringContaining("the color of the truck") as string });
});
