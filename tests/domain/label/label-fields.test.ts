import { expect, test } from "vitest";
import { GENERAL_FIELD_NAMES, GENERAL_FIELDS, UNREAD_GENERAL, UNREAD_USE, USE_FIELD_NAMES, USE_FIELDS } from "#domain/label/label-fields";

test("every field has words, a heading and a hint that ends as a sentence does", () => {
  for (const field of [...Object.values(GENERAL_FIELDS), ...Object.values(USE_FIELDS)]) {
    expect(field.words).toMatch(/^[A-Z]/);
    expect(field.group).toMatch(/^[A-Z]/);
    expect(field.hint).toMatch(/^[A-Z].*[.]$/);
  }
});

test("no two fields have the same words, so that a person and a screen reader can tell them apart", () => {
  const words = [...Object.values(GENERAL_FIELDS), ...Object.values(USE_FIELDS)].map((field) => field.words);
  expect(new Set(words).size).toBe(words.length);
});

test("what nobody has read is empty in every field", () => {
  expect(Object.keys(UNREAD_GENERAL)).toEqual(GENERAL_FIELD_NAMES);
  expect(Object.keys(UNREAD_USE)).toEqual(USE_FIELD_NAMES);
  expect([...Object.values(UNREAD_GENERAL), ...Object.values(UNREAD_USE)].join("")).toBe("");
});
