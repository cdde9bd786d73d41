import { describe, expect, test } from "vitest";
import { missingParts, noticeFields, unquotedPrecautions } from "#domain/papers/customer-notice";
import { NOT_RECORDED, said } from "#domain/papers/paper";
import { ILLINOIS_NOTICE, NOTICE_AFTER, NOTICE_BEFORE } from "../../support/sample-papers";

describe("missingParts", () => {
  test("finds none in a notice that says everything or leaves room to write it", () => {
    expect(missingParts(NOTICE_BEFORE)).toEqual([]);
    expect(missingParts(NOTICE_AFTER)).toEqual([]);
  });

  const { company } = NOTICE_AFTER.frame;
  test.each([
    ["name of the business", { frame: { ...NOTICE_AFTER.frame, company: { ...company, name: " " } } }],
    ["phone of the business", { frame: { ...NOTICE_AFTER.frame, company: { ...company, phone: "" } } }],
    ["signature of the applicator", { signature: NOT_RECORDED }],
    ["license or registration number of the applicator", { applicatorLicense: said("") }],
    ["date", { date: NOT_RECORDED }],
    ["time", { time: NOT_RECORDED }],
    ["types of service with brand names", { services: [] }],
    ["types of service with brand names", { services: [{ service: "Insect control", brandNames: NOT_RECORDED }] }],
    ["precautions of the label after the application", { precautions: [{ product: "Clovergone 3D", labelWords: [] }] }],
    ["phone for more information", { moreInformationPhone: NOT_RECORDED }],
  ])("names the %s", (part, changes) => {
    expect(missingParts({ ...NOTICE_AFTER, ...changes })).toEqual([part]);
  });

  test("names the instruction about the marker when the law's words for it are empty", () => {
    const law = NOTICE_AFTER.law;
    if (law.kind !== "on-file") throw new Error("the sample's law is on file");
    expect(missingParts({ ...NOTICE_AFTER, law: { ...law, markerRemoval: "" } })).toEqual(["when the marker may be removed"]);
  });

  test("asks for nothing that a law does not ask for", () => {
    const law = NOTICE_AFTER.law;
    if (law.kind !== "on-file") throw new Error("the sample's law is on file");
    expect(missingParts({ ...NOTICE_AFTER, law: { ...law, required: ["date"] }, services: [] })).toEqual([]);
  });

  test("says of a law that is not on file what is missing, and invents no list", () => {
    expect(missingParts({ ...NOTICE_AFTER, law: ILLINOIS_NOTICE })).toEqual(["The law’s text about what a customer must be told is not on file."]);
  });
});

test("noticeFields has the facts at the top of a notice in order", () => {
  expect(noticeFields(NOTICE_BEFORE).map(({ label, value }) => [label, value.kind])).toEqual([
    ["Date", "said"], ["Time", "to-write"], ["Applicator", "said"], ["License or registration", "said"],
  ]);
});

describe("unquotedPrecautions", () => {
  const words = "Do not allow people or pets to enter the treated area until dried.";
  const quoting = (asks: string) => ({ countedFrom: "", mindedByCrew: [{ asks: "Clovergone 3D", words: ["dry"] }], groups: [{ lawns: "Front", steps: [{ when: "", what: "", why: [{ asks, words: [words] }] }] }] });

  test("leaves out what a step quotes of the same product, and keeps the rest", () => {
    const precautions = [{ product: "Clovergone 3D", labelWords: [words, "Keep children away."] }];
    expect(unquotedPrecautions({ precautions, aftercare: quoting("Clovergone 3D") })).toEqual([{ product: "Clovergone 3D", labelWords: ["Keep children away."] }]);
    expect(unquotedPrecautions({ precautions: [{ product: "Clovergone 3D", labelWords: [words] }], aftercare: quoting("Clovergone 3D") })).toEqual([]);
    expect(unquotedPrecautions({ precautions, aftercare: quoting("Another") })).toEqual(precautions);
    const leaf = [{ product: "Clovergone 3D", labelWords: ["dry", words] }, { product: "Another", labelWords: ["dry"] }];
    expect(unquotedPrecautions({ precautions: leaf, aftercare: quoting("Clovergone 3D") })).toEqual([{ product: "Another", labelWords: ["dry"] }]);
  });

  test("keeps all of a notice without steps, and a label that states none says so", () => {
    expect(unquotedPrecautions({ precautions: NOTICE_BEFORE.precautions })).toEqual(NOTICE_BEFORE.precautions);
    const none = [{ product: "Greenline", labelWords: "states-none" as const }, { product: "Unread", labelWords: [] }];
    expect(unquotedPrecautions({ precautions: none, aftercare: quoting("Greenline") })).toEqual(none);
  });
});
