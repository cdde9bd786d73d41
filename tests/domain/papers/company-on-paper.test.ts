import { expect, test } from "vitest";
import { companyOnPaper, numberOnPaper, rulesOnPaper } from "#domain/papers/company-on-paper";

test("what is not on file says so, and a missing license number is left for the head to say", () => {
  expect(companyOnPaper({ name: "Birchline", address: null, phone: null, businessLicenseNumber: null })).toEqual({ name: "Birchline", address: "Address not on file", phone: "Phone not on file" });
  expect(companyOnPaper({ name: "Birchline", address: "1 Lane", phone: "317-555-0142", businessLicenseNumber: "DEMO-1" })).toEqual({ name: "Birchline", address: "1 Lane", phone: "317-555-0142", licenseNumber: "DEMO-1" });
});

test("numbers and rules in the words of heads and feet", () => {
  expect(numberOnPaper(12)).toBe("No. 12");
  expect(rulesOnPaper("IN 2026-11")).toBe("Rules IN 2026-11");
});
