// A record of an invented company as the register holds it: tests say only what differs.
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type RecordContent, type RecordedTreatment } from "#domain/register/record-content";
import { of } from "#domain/quantities/quantity";

const area = { dimension: "area", amount: String(of("sq ft", 2000n).amount), words: "2,000 sq ft" } as const;
const total = { dimension: "mass", amount: String(of("lb", 5n).amount), words: "5 lb" } as const;

export const FEED_TREATMENT: RecordedTreatment = {
  line: 1, productId: "feed", productName: "Harrowgate 32", epaRegistrationNumber: null, formulation: "dry granule", activeIngredients: [], isRestrictedUse: false,
  serviceType: "fertilizer", targets: [], reason: "spring feed", plannedRate: "2.5 lb per 1,000 sq ft", measuredBy: "weight", total,
  lots: [{ lotId: "lot", number: "L-1", amount: total }], fill: null, equipmentName: "Spreader", lawns: [{ zoneId: "front", lawnName: "Front", treatedArea: area, amount: total, activeIngredients: [] }],
  precautions: ["Keep off until watered in."],
};

export const CONTENT: RecordContent = {
  form: "application-record-1",
  company: { name: "Birchline Lawn Care", address: null, phone: "317-555-0142", businessLicenseNumber: null },
  customer: { name: "Ines Vandermolen", phone: null },
  site: { propertyId: "property", street: "4 Sorrel Lane", city: "Millbrook", state: "IN", zip: "46304" },
  visit: { visitId: "visit", name: "Spring feed", mixTicketNumber: 1 },
  applicator: { personId: "person", name: "Dana Quill", license: { kind: "certified-applicator", state: "IN", number: "C-1", category: "3b Turf", expiresOn: "2026-12-31" as CalendarDate } },
  supervisor: null,
  startedAt: "2026-04-14T12:50:00.000Z", endedAt: "2026-04-14T13:09:00.000Z", timeZone: "America/Indiana/Indianapolis", enteredAt: "2026-04-14T13:15:00.000Z",
  weather: { kind: "not-taken" },
  lawns: [{ zoneId: "front", name: "Front", grasses: ["tall fescue"], outcome: "done" }],
  treatments: [FEED_TREATMENT], signIsUp: true, noticeWasLeft: false, remarks: null, rulesVersion: "IN 2026-11", holdAnswers: [], findings: [], signature: null,
};
