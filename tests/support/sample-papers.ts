// Papers of an invented company, one of each kind. The signs' facts are those of the laws named beside them.
import { type CustomerNotice, type NoticeLaw } from "#domain/papers/customer-notice";
import { type LoadingGroup, type LoadingList } from "#domain/papers/loading-list";
import { type PaperFinding, type PaperFrame, TO_WRITE, said } from "#domain/papers/paper";
import { type PostingSign, type SignLaw } from "#domain/papers/posting-sign";
import { type RouteSheet, type RouteStop } from "#domain/papers/route-sheet";

export const COMPANY = {
  name: "Birchline Lawn Care",
  address: "41 Depot Street, Millbrook, IN 46000",
  phone: "317-555-0142",
  licenseNumber: "DEMO-BL-2207",
};

/** A frame of the demonstration for a paper of this name. */
export function frameOf(title: string, number?: string): PaperFrame {
  return {
    company: COMPANY,
    title,
    ...(number === undefined ? {} : { number }),
    date: "Tuesday, April 14, 2026",
    createdEpochMilliseconds: Date.UTC(2026, 3, 13, 20, 10),
    ruleVersion: "Rules of April 3, 2026, version 12",
    source: "From the plan as kept on April 13, 4:10 pm",
    isDemonstration: true,
  };
}

export const FINDINGS: readonly PaperFinding[] = [
  { level: "hold", words: "Clovergone 3D is not for newly seeded turf. The back lawn was seeded 24 days ago; the label asks for three mowings. Leave the back lawn for today.", source: "Label, Restrictions" },
  { level: "take-care", words: "Wind is forecast at 9 mph by 11 am; the limit is 10 mph. Do this stop first.", source: "Weather" },
  { level: "note", words: "The neighbor at 1422 keeps bees.", source: "House rule" },
  { level: "answered", words: "A notice is asked for by an adjoining neighbor. Answered by Dana Quill, license DEMO-1182, April 13: the neighbor was told by phone at 3:20 pm.", source: "Law, 415 ILCS 65/3" },
];

export const LOADING: readonly LoadingGroup[] = [
  {
    title: "Products",
    lines: [
      { what: "Clovergone 3D", amount: "1 jug of 2.5 gal", lot: "DEMO-L-0417", location: "Shed, cabinet 2" },
      { what: "Greenline 20-0-8 with 50% slow nitrogen", amount: "9 bags of 50 lb", lot: "DEMO-L-0392", location: "Shed, pallet B" },
    ],
  },
  { title: "Signs and notices", lines: [{ what: "Lawn markers with stakes", amount: "11" }, { what: "Customer notices", amount: "9" }] },
  { title: "Protective gear and spill kit", lines: [{ what: "Chemical-resistant gloves", amount: "2 pairs" }, { what: "Spill kit, sealed", amount: "1" }] },
  { title: "Nothing of this kind", lines: [] },
];

export const LOADING_LIST: LoadingList = {
  frame: frameOf("Loading list", "LL-0414-2"),
  truck: "Truck 2",
  people: ["Dana Quill", "Rudi Ames"],
  groups: LOADING,
  findings: [{ level: "take-care", words: "Clovergone 3D runs short by 12 fl oz at the last stop. Take a second jug.", source: "Stock" }],
};

/** A stop with one mix on two lawns. */
export function stopOf(order: number, changes: Partial<RouteStop> = {}): RouteStop {
  return {
    order: String(order),
    arrival: "8:50 am",
    timeWindow: "between 8 and 11 am",
    address: `${1400 + order * 6} Larkspur Lane, Millbrook`,
    customer: "Ines Vandermolen",
    phone: "317-555-0178",
    accessNotes: ["Park on the street.", "Latch of the side gate sticks; lift it."],
    mixes: [
      {
        name: "Tank mix: Clovergone 3D, Greenline 20-0-0",
        ticketNumber: `MT-0414-${order}`,
        usedUnit: "gal",
        amounts: [
          { lawn: "Front", treatedArea: "4,210 sq ft", amount: "8.4 gal" },
          { lawn: "Back and side strip", treatedArea: "6,880 sq ft", amount: "13.8 gal" },
        ],
      },
    ],
    findings: [],
    ...changes,
  };
}

export const ROUTE_SHEET: RouteSheet = {
  frame: frameOf("Route sheet", "RS-0414-2"),
  truck: "Truck 2",
  people: ["Dana Quill (license DEMO-1182)", "Rudi Ames (registered technician)"],
  equipment: ["Tank 200 gal, hose reel", "Walk-behind spreader 3"],
  summary: "4 stops, 41 miles, back at the shop about 3:40 pm.",
  loading: LOADING,
  findings: [{ level: "note", words: "Sunrise at 7:08 am. Frost is possible before 8 am.", source: "Weather" }],
  stops: [
    stopOf(1),
    stopOf(2, { findings: FINDINGS, accessNotes: ["Keypad code 4417# at the gate."] }),
    stopOf(3, {
      customer: "Saint Brigid Parish and School",
      mixes: [
        ...stopOf(3).mixes,
        { name: "Spread: Greenline 20-0-8", usedUnit: "lb", amounts: [{ lawn: "Ball field", treatedArea: "1.4 acres", amount: "5 bags and 28 lb" }] },
      ],
    }),
    stopOf(4),
  ],
};

/** 357 IAC 1-5-2: at least 4 x 5 in, contrasting colors, letters at least 3/8 in, these words. */
export const INDIANA_SIGN: SignLaw = {
  jurisdiction: "Indiana",
  citation: "357 IAC 1-5-2",
  sidesInches: [4, 5],
  orientation: "any",
  sizeIs: "at-least",
  leastLetterHeightInches: 0.375,
  colorWords: "Letters and paper of contrasting colors",
  phrases: [{ kind: "words", text: "LAWN CARE APPLICATION KEEP OFF THE GRASS" }],
};

/** 415 ILCS 65/3(a): 4 x 5 in upright or lying, white, contrasting letters of at least 3/8 in, these words. */
export const ILLINOIS_SIGN: SignLaw = {
  jurisdiction: "Illinois",
  citation: "415 ILCS 65/3(a)",
  sidesInches: [4, 5],
  orientation: "any",
  sizeIs: "exactly",
  leastLetterHeightInches: 0.375,
  colorWords: "White paper, letters of a contrasting color",
  phrases: [
    { kind: "words", text: "LAWN CARE APPLICATION - STAY OFF GRASS UNTIL DRY - FOR MORE INFORMATION CONTACT:" },
    { kind: "company-name" },
    { kind: "company-phone" },
  ],
};

export function signOf(law: SignLaw, name = COMPANY.name): PostingSign {
  const frame = frameOf("Lawn marker");
  return { frame: { ...frame, company: { ...frame.company, name } }, law, signs: 1 };
}

/** 357 IAC 1-5-3 (section number from memory); the parts and the instruction as the Office of Indiana State Chemist words them. */
export const INDIANA_NOTICE: NoticeLaw = {
  kind: "on-file",
  jurisdiction: "Indiana",
  citation: "357 IAC 1-5-3 (section number from memory)",
  required: [
    "business-name", "business-phone", "applicator-signature", "applicator-license", "date", "time",
    "services-with-brand-names", "label-precautions", "marker-removal", "phone-for-more-information",
  ],
  markerRemoval: "Please remove the lawn marker, no sooner than the day after the application.",
};

export const ILLINOIS_NOTICE: NoticeLaw = {
  kind: "not-on-file",
  jurisdiction: "Illinois",
  citation: "415 ILCS 65/3(c)-(f)",
  missing: "The law’s text about what a customer must be told is not on file.",
};

/** Printed before the visit: time, products and signature are left to write. */
export const NOTICE_BEFORE: CustomerNotice = {
  frame: frameOf("Notice of lawn care application", "CN-0414-2"),
  law: INDIANA_NOTICE,
  customer: "Ines Vandermolen",
  address: "1412 Larkspur Lane, Millbrook",
  applicator: said("Dana Quill"),
  applicatorLicense: said("DEMO-1182"),
  date: said("Tuesday, April 14, 2026"),
  time: TO_WRITE,
  services: [
    { service: "Broadleaf weed control", brandNames: TO_WRITE },
    { service: "Other: fertilizer", brandNames: TO_WRITE },
  ],
  precautions: [{ product: "Clovergone 3D", labelWords: ["Do not allow people or pets to enter the treated area until dried.", "Do not mow for 2 days."] }],
  aftercare: {
    countedFrom: "Times are as planned, for work on Tuesday, April 14, 2026, 9:10 am to 9:30 am. They move with the work.",
    groups: [
      {
        lawns: "Front",
        steps: [
          {
            when: "Until 4 hours after the work ends, about Tuesday, Apr 14, 2026, 1:30 pm as planned",
            what: "Keep people and pets off the lawn.",
            why: [{ asks: "Clovergone 3D", words: ["Do not allow people or pets to enter the treated area until dried."] }],
          },
          { when: "Until Wednesday, Apr 15, 2026, 12 am", what: "Leave the sign up.", why: [{ asks: "357 IAC 1-5-2", words: [] }] },
        ],
      },
      { lawns: "Back and side strip", steps: [] },
    ],
    mindedByCrew: [],
  },
  moreInformationPhone: said("317-555-0142"),
  signature: TO_WRITE,
};

export const NOTICE_AFTER: CustomerNotice = {
  ...NOTICE_BEFORE,
  frame: { ...NOTICE_BEFORE.frame, source: "From record AR-000731, written April 14, 9:34 am" },
  time: said("9:12 to 9:31 am"),
  services: [
    { service: "Broadleaf weed control", brandNames: said("Clovergone 3D") },
    { service: "Other: fertilizer", brandNames: said("Greenline 20-0-0") },
  ],
  signature: said("Dana Quill, on the screen, April 14, 9:33 am"),
};
