import { expect, test } from "vitest";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { missingParts } from "#domain/papers/customer-notice";
import { type AftercareOnNotice } from "#domain/papers/notice-aftercare";
import { noticeAfter, noticeBefore, type PlannedNotice } from "#domain/papers/notice-of-visit";
import { CONTENT, FEED_TREATMENT } from "../../support/recorded";
import { frameOf, INDIANA_NOTICE } from "../../support/sample-papers";

const AFTERCARE: AftercareOnNotice = { countedFrom: "Times are as planned.", groups: [{ lawns: "Front", steps: [] }], mindedByCrew: [] };

const PLANNED: PlannedNotice = {
  frame: frameOf("Notice"), business: { name: "Birchline", address: null, phone: "317-555-0142", businessLicenseNumber: null }, law: INDIANA_NOTICE, customer: "Ines Vandermolen",
  address: "4 Sorrel Lane, Millbrook", on: "2026-04-14" as CalendarDate, applicator: "Dana Quill", license: "IN C-1",
  products: [{ productName: "Harrowgate 32", serviceType: "fertilizer", precautions: [], isRead: true }],
  aftercare: AFTERCARE,
};

test("before the visit time, products and signature are left to write, and nothing that the law asks for is missing", () => {
  const notice = noticeBefore(PLANNED);
  expect([notice.time, notice.signature, notice.services[0]?.brandNames]).toEqual([{ kind: "to-write" }, { kind: "to-write" }, { kind: "to-write" }]);
  expect(notice.precautions).toEqual([{ product: "Harrowgate 32", labelWords: "states-none" }]);
  expect(notice.aftercare).toBe(AFTERCARE);
  expect(missingParts(notice)).toEqual([]);
});

test("a label that nobody read, and a phone that is not on file, are missing by name", () => {
  const unread = noticeBefore({ ...PLANNED, products: [{ productName: "Harrowgate 32", serviceType: "fertilizer", precautions: [], isRead: false }] });
  expect(missingParts(unread)).toEqual(["precautions of the label after the application"]);
  const silent = noticeBefore({ ...PLANNED, business: { ...PLANNED.business, phone: null } });
  expect(missingParts(silent)).toEqual(["phone of the business", "phone for more information"]);
});

test("after the visit it says what the record says, each product once under its service", () => {
  const notice = noticeAfter(frameOf("Notice"), INDIANA_NOTICE, { ...CONTENT, treatments: [FEED_TREATMENT, { ...FEED_TREATMENT, line: 2 }], signature: "D. Quill" }, AFTERCARE);
  expect(notice.time).toEqual({ kind: "said", text: "8:50 am to 9:09 am" });
  expect(notice.services).toEqual([{ service: "Fertilizer", brandNames: { kind: "said", text: "Harrowgate 32" } }]);
  expect(notice.precautions).toEqual([{ product: "Harrowgate 32", labelWords: ["Keep off until watered in."] }]);
  expect(notice.aftercare).toBe(AFTERCARE);
  expect(notice.signature).toEqual({ kind: "said", text: "D. Quill, on the screen, April 14, 2026, 9:15 am" });
});
