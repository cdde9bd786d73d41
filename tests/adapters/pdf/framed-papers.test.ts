import { describe, expect, test } from "vitest";
import { renderApplicationRecord } from "#adapters/pdf/render-application-record";
import { renderCustomerNotice } from "#adapters/pdf/render-customer-notice";
import { renderLoadingList } from "#adapters/pdf/render-loading-list";
import { renderMixTicket } from "#adapters/pdf/render-mix-ticket";
import { renderRouteSheet } from "#adapters/pdf/render-route-sheet";
import { type PaperSize } from "#adapters/pdf/sheet";
import { type Outcome } from "#domain/foundation/outcome";
import { type PaperFrame } from "#domain/papers/paper";
import { collisionsIn, readPaper, wordsIn } from "../../support/read-paper";
import { COMPANY, FINDINGS, ILLINOIS_NOTICE, LOADING_LIST, NOTICE_AFTER, NOTICE_BEFORE, ROUTE_SHEET, stopOf } from "../../support/sample-papers";
import { MIX_TICKET, RECORD } from "../../support/sample-visit-papers";

interface Case {
  readonly name: string;
  readonly frame: PaperFrame;
  readonly render: (size?: PaperSize) => Promise<Outcome<Buffer>>;
  readonly pages: number;
}

const cases: readonly Case[] = [
  { name: "route sheet", frame: ROUTE_SHEET.frame, render: (size) => renderRouteSheet(ROUTE_SHEET, size), pages: 3 },
  { name: "loading list", frame: LOADING_LIST.frame, render: (size) => renderLoadingList(LOADING_LIST, size), pages: 1 },
  { name: "mix ticket", frame: MIX_TICKET.frame, render: (size) => renderMixTicket(MIX_TICKET, size), pages: 2 },
  { name: "application record", frame: RECORD.frame, render: (size) => renderApplicationRecord(RECORD, size), pages: 2 },
  { name: "notice before", frame: NOTICE_BEFORE.frame, render: (size) => renderCustomerNotice(NOTICE_BEFORE, size), pages: 1 },
  { name: "notice after", frame: NOTICE_AFTER.frame, render: (size) => renderCustomerNotice(NOTICE_AFTER, size), pages: 1 },
];

async function bytesOf(rendering: Promise<Outcome<Buffer>>): Promise<Buffer> {
  const rendered = await rendering;
  if (!rendered.ok) throw new Error(rendered.refusal.sentence);
  return rendered.value;
}

const read = async (rendering: Promise<Outcome<Buffer>>) => readPaper(await bytesOf(rendering));
const allWords = ({ pages }: Awaited<ReturnType<typeof readPaper>>) => wordsIn(pages.flatMap(({ texts }) => texts));

describe.each(cases)("a $name", ({ frame, render, pages: pageCount }) => {
  test("stays inside its margins, and no text touches another", async () => {
    for (const size of ["letter", "a4"] as const) {
      const paper = await read(render(size));
      expect(collisionsIn(paper, 36)).toEqual([]);
      expect(paper.pages.map(({ width, height }) => [Math.round(width), Math.round(height)])[0]).toEqual(size === "letter" ? [612, 792] : [595, 842]);
    }
  });

  test("has its head and foot on every page, counted", async () => {
    const { pages } = await read(render());
    expect(pages).toHaveLength(pageCount);
    for (const [index, { texts }] of pages.entries()) {
      const words = wordsIn(texts);
      const expected = [frame.company.name, frame.company.address, frame.company.phone, `License ${COMPANY.licenseNumber}`, frame.title, frame.date];
      for (const each of [...expected, `page ${index + 1} of ${pageCount}`, frame.ruleVersion, frame.source, "DEMONSTRATION"]) expect(words).toContain(each);
    }
  });

  test("is the same file each time", async () => {
    expect((await bytesOf(render())).equals(await bytesOf(render()))).toBe(true);
  });

  test("can be followed by a reading aid", async () => {
    const paper = await read(render());
    expect(paper.isTagged).toBe(true);
    expect(paper.language).toBe("en-US");
    expect(paper.title).toContain(frame.title);
    const roles = paper.pages.flatMap((page) => page.roles);
    expect(roles).toEqual(expect.arrayContaining(["Document", "H1", "P"]));
  });

  test("has no text below 9 pt", async () => {
    const { pages } = await read(render());
    expect(Math.min(...pages.flatMap(({ texts }) => texts.map(({ emHeight }) => emHeight)))).toBeGreaterThanOrEqual(9);
  });
});

describe("a route sheet", () => {
  test("says per stop what a crew needs, and has room to write the rest", async () => {
    const words = allWords(await read(renderRouteSheet(ROUTE_SHEET)));
    for (const each of ["1412 Larkspur Lane, Millbrook", "8:50 am", "between 8 and 11 am", "Ines Vandermolen", "Back and side strip", "6,880 sq ft", "13.8 gal"]) {
      expect(words).toContain(each);
    }
    const labels = ["Start", "End", "Wind speed, mph", "Wind from", "Temperature, °F", "Initials"];
    for (const label of labels) expect(words.split(label).length - 1, label).toBeGreaterThanOrEqual(ROUTE_SHEET.stops.length);
  });

  test("has no code of a gate on it", async () => {
    const words = allWords(await read(renderRouteSheet(ROUTE_SHEET)));
    expect(words).not.toContain("4417");
    expect(words).toContain("holds a code and is kept off paper");
  });

  test("prints each level of finding with its word", async () => {
    const words = allWords(await read(renderRouteSheet(ROUTE_SHEET)));
    for (const word of ["Hold.", "Take care.", "Note.", "Hold, answered."]) expect(words).toContain(word);
    for (const finding of FINDINGS) expect(words).toContain(finding.words);
  });

  test("keeps each stop on one page", async () => {
    const { pages } = await read(renderRouteSheet({ ...ROUTE_SHEET, stops: Array.from({ length: 40 }, (_, index) => stopOf(index + 1)) }));
    for (const { texts } of pages) {
      const words = wordsIn(texts);
      expect(words.split("Larkspur Lane").length).toBe(words.split("Initials").length);
    }
    expect(wordsIn(pages.flatMap(({ texts }) => texts)).split("Larkspur Lane").length - 1).toBe(40);
  });
});

describe("a customer notice", () => {
  test("lists what to do and leave before anything else, with who asks for it and lawns by name, and quotes each word once", async () => {
    const words = allWords(await read(renderCustomerNotice(NOTICE_BEFORE)));
    const inOrder = ["What to do and leave", "Times are as planned", "Front", "Until 4 hours after the work ends", "Keep people and pets off the lawn.", "Clovergone 3D: “Do not allow people", "Back and side strip", "Nothing is to be done or left here afterwards.", "What was done", "What the labels ask of you", "“Do not mow for 2 days.”"];
    const places = inOrder.map((each) => words.indexOf(each));
    expect(places).not.toContain(-1);
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(words.split("“Do not allow people")).toHaveLength(2);
  });

  test("says where nothing is to be done or left at all, and of one group of lawns no name", async () => {
    const groups = [{ lawns: "Front", steps: [] }];
    const words = allWords(await read(renderCustomerNotice({ ...NOTICE_BEFORE, aftercare: { countedFrom: "Times are as planned.", groups, mindedByCrew: [] } })));
    expect(words).toContain("Nothing is to be done or left afterwards.");
    expect(words).not.toContain("Front");
  });

  test("that was issued before it had steps is printed as it was", async () => {
    const { aftercare: _steps, ...before } = NOTICE_BEFORE;
    const words = allWords(await read(renderCustomerNotice(before)));
    expect(words).not.toContain("What to do and leave");
    expect(words).toContain("“Do not allow people or pets to enter the treated area until dried.”");
  });
});

describe("a mix ticket", () => {
  test("says how leaf and soil must be and what rain spoils, in the label's words", async () => {
    const words = allWords(await read(renderMixTicket(MIX_TICKET)));
    expect(words).toContain("Leaf, soil and rain");
    expect(words).toContain("Clovergone 3D wants a dry leaf when it goes down. “Apply to dry foliage.”");
    expect(words).toContain("Rain of 0.1 in or more before 3:30 pm spoils Clovergone 3D.");
    const { atApplication: _lines, ...before } = MIX_TICKET;
    expect(allWords(await read(renderMixTicket(before)))).not.toContain("Leaf, soil and rain");
  });
});

describe("a table longer than a page", () => {
  const lines = Array.from({ length: 200 }, (_, index) => ({ what: `Product number ${index + 1}`, amount: `${index + 1} lb`, lot: `DEMO-${index + 1}` }));

  test("prints each of 200 rows once, in order, below a head on each page", async () => {
    const paper = await read(renderLoadingList({ ...LOADING_LIST, groups: [{ title: "Products", lines }] }));
    expect(collisionsIn(paper, 36)).toEqual([]);
    expect(paper.pages.length).toBeGreaterThan(5);
    const printed = [...allWords(paper).matchAll(/Product number (\d+)/g)].map(([, number]) => Number(number));
    expect(printed).toEqual(lines.map((_, index) => index + 1));
    for (const { texts } of paper.pages.slice(0, -1)) expect(texts.filter(({ text }) => text === "Products")).toHaveLength(1);
    // The head is read once, however often it is printed.
    expect(paper.pages.flatMap(({ roles }) => roles).filter((role) => role === "TH")).toHaveLength(4);
  });

  test("refuses a row that is higher than a page, by its words", async () => {
    const what = "An endless product ".repeat(900);
    const rendered = await renderLoadingList({ ...LOADING_LIST, groups: [{ title: "Products", lines: [{ what, amount: "1 lb" }] }] });
    expect(rendered.ok ? "a paper" : rendered.refusal.sentence).toContain("An endless product");
  });
});

describe("long names", () => {
  const long = "Aleksandra-Konstantina von Hohenlohe-Schillingsfürst-Featherstonehaugh";
  const unbroken = "W".repeat(120);

  test("wrap inside their cells and are printed whole", async () => {
    const sheet = { ...ROUTE_SHEET, stops: [stopOf(1, { customer: long, address: `${long} Memorial Boulevard, Millbrook`, arrival: "about noon" })] };
    const ticket = { ...MIX_TICKET, products: MIX_TICKET.products.map((product) => ({ ...product, name: `${product.name} ${unbroken}` })) };
    const crowded = { ...LOADING_LIST, frame: { ...LOADING_LIST.frame, company: { ...COMPANY, name: long, address: `${long}, ${unbroken}` }, title: unbroken } };
    for (const rendering of [renderRouteSheet(sheet), renderMixTicket(ticket), renderLoadingList(crowded)]) {
      const paper = await read(rendering);
      expect(collisionsIn(paper, 36)).toEqual([]);
    }
    expect(allWords(await read(renderRouteSheet(sheet)))).toContain(long);
  });
});

describe("letters", () => {
  const named = (customer: string) => renderRouteSheet({ ...ROUTE_SHEET, stops: [stopOf(1, { customer })] });

  test("of other Latin alphabets are printed", async () => {
    expect(allWords(await read(named("Łukasz Kovačević")))).toContain("Łukasz Kovačević");
  });

  test.each([["Ωmega Lawns", "U+03A9"], ["8:50\u202fam", "U+202F"], ["at most ≤ 3", "U+2264"]])("that no font has are refused by name: %j", async (text, code) => {
    const rendered = await named(text);
    expect(rendered.ok ? "a paper" : rendered.refusal.sentence).toContain(code);
  });
});

describe("a mix ticket", () => {
  test("sets amounts at 20 pt", async () => {
    const { pages } = await read(renderMixTicket(MIX_TICKET));
    const amounts = MIX_TICKET.loads.flatMap((load) => load.amounts.map(({ amount }) => amount));
    const large = pages.flatMap(({ texts }) => texts.filter(({ emHeight }) => Math.abs(emHeight - 20) < 0.01).map(({ text }) => text.trim()));
    expect(large).toEqual(expect.arrayContaining(amounts));
  });

  test("begins a long table where it stands and never leaves its heading alone at the foot of a page", async () => {
    const lines = (count: number, words: string) => Array.from({ length: count }, (_, index) => ({ when: `Until day ${String(index + 1)}`, what: words, because: "the program" }));
    for (const [count, words] of [[3, "Do not seed."], [30, "Do not seed."], [12, "Water in slowly. ".repeat(40)]] as const) {
      // The heading is brought down the page, line by line.
      for (let notes = 0; notes < 24; notes += 1) {
        const findings = Array.from({ length: notes }, (_, index) => ({ level: "note", words: `Look ${String(index)}.`, source: "House rule" }) as const);
        const paper = await read(renderMixTicket({ ...MIX_TICKET, findings, aftercare: lines(count, words) }));
        expect(collisionsIn(paper, 36)).toEqual([]);
        const pageOf = (text: string) => paper.pages.findIndex(({ texts }) => wordsIn(texts).includes(text));
        expect(pageOf("Afterward")).toBe(pageOf("Until day 1 "));
        const printed = [...allWords(paper).matchAll(/Until day (\d+)/g)].map(([, number]) => Number(number));
        expect(printed).toEqual(Array.from({ length: count }, (_, index) => index + 1));
      }
    }
  });

  test("throws rather than print amounts under the wrong heads", async () => {
    const lawns = MIX_TICKET.lawns.map((lawn) => ({ ...lawn, amounts: lawn.amounts.slice(1) }));
    await expect(async () => renderMixTicket({ ...MIX_TICKET, lawns })).rejects.toThrow("Back and side strip");
  });
});

describe("an application record", () => {
  test("says of everything how it is known", async () => {
    const words = allWords(await read(renderApplicationRecord(RECORD)));
    for (const each of ["not taken", "not recorded", "12.0 fl oz, measured by flow meter", "166.4 fl oz, as planned, not measured", RECORD.hash, RECORD.previousHash]) {
      expect(words).toContain(each);
    }
    expect(words).toContain("Signature of the applicator");
  });
});

describe("a customer notice", () => {
  test("printed before the visit leaves room and says nothing that nobody knows yet", async () => {
    const words = allWords(await read(renderCustomerNotice(NOTICE_BEFORE)));
    expect(words).toContain("Signature of the applicator");
    expect(words).not.toContain("Greenline");
    expect(words).toContain("no sooner than the day after");
  });

  test("that lacks a part of its law is refused by that part", async () => {
    const rendered = await renderCustomerNotice({ ...NOTICE_AFTER, precautions: [] });
    expect(rendered.ok ? "a paper" : rendered.refusal.sentence).toContain("precautions of the label");
  });

  test("of a law that is not on file is for the office, and says so", async () => {
    const words = allWords(await read(renderCustomerNotice({ ...NOTICE_AFTER, law: ILLINOIS_NOTICE })));
    expect(words).toContain("For the office only");
    expect(words).toContain("Not for the customer.");
    expect(words).not.toContain("no sooner than");
  });
});
