import { expect, test } from "vitest";
import { signTexts } from "#domain/papers/posting-sign";
import { ILLINOIS_SIGN } from "../../support/sample-papers";

test("the company's name and phone stand where the law asks for them, and the phone does not break", () => {
  expect(signTexts(ILLINOIS_SIGN, { name: "Birchline Lawn Care", phone: "(317) 555-0142" })).toEqual([
    "LAWN CARE APPLICATION - STAY OFF GRASS UNTIL DRY - FOR MORE INFORMATION CONTACT:",
    "Birchline Lawn Care",
    "(317)\u00a0555-0142",
  ]);
});
