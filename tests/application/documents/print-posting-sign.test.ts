import { createRequire } from "node:module";
import { afterAll, beforeAll, expect, test } from "vitest";
import { printPostingSign } from "#application/documents/print-posting-sign";
import { packOf } from "#domain/rules/packs-on-file";
import { type UsState } from "#domain/company/us-state";
import { valueOf } from "../../support/crew";
import { anIllinoisVisit, aPrintedDay, printed, type PrintedDay } from "../../support/documents";
import { openHouse, type TestHouse } from "../../support/house";
import { type ReadPage } from "../../support/read-paper";

let house: TestHouse;
let at: PrintedDay;
let illinoisVisitId: string;
beforeAll(async () => {
  house = await openHouse();
  at = await aPrintedDay(house);
  illinoisVisitId = (await anIllinoisVisit(house, at.company, at.day)).visitId;
});
afterAll(() => house.close());

const POINTS_AN_INCH = 72;
// Fontkit comes with PDFKit and ships no types.
const requireFrom = createRequire(import.meta.url);
const fontkit = createRequire(requireFrom.resolve("pdfkit"))("fontkit") as { openSync(path: string): { readonly unitsPerEm: number; readonly capHeight: number } };
const bold = fontkit.openSync(requireFrom.resolve("@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff"));
/** A capital's height in parts of the em, as the font itself has it. */
const CAPITAL_EM = bold.capHeight / bold.unitsPerEm;

function ruleOf(state: UsState) {
  const fact = packOf(state)?.facts["posting-sign"];
  if (fact?.onFile !== true) throw new Error("the sign of this state is on file");
  return fact.value;
}

/** Places of the dashed cut lines along one side, each once. */
function cutsOf({ strokes }: ReadPage, along: 0 | 1): number[] {
  const cuts = strokes.filter(({ isDashed, from, to }) => isDashed && Math.abs(from[along] - to[along]) < 0.01).map(({ from }) => Math.round(from[along] * 100) / 100);
  return [...new Set(cuts)].sort((one, other) => one - other);
}

async function signOf(visitId: string) {
  const { issuedPaperId } = valueOf(await printPostingSign(house, at.company.owner.key, { visitId }));
  const { paper, words } = await printed(house, at.company.owner.key, issuedPaperId);
  const [page] = paper.pages;
  if (page === undefined) throw new Error("a sign has a page");
  return { page, words };
}

test.each([["IN"], ["IL"]] as const)("the sign of %s keeps its pack's size and letter height in page coordinates, and every word inside its cut lines", async (state) => {
  const { page, words } = await signOf(state === "IN" ? at.visit.visitId : illinoisVisitId);
  const rule = ruleOf(state);
  const [left, right] = cutsOf(page, 0);
  const [bottom, top] = cutsOf(page, 1);
  if (left === undefined || right === undefined || bottom === undefined || top === undefined) throw new Error("a sign is cut out along lines");
  const sides = [right - left, top - bottom].map((points) => points / POINTS_AN_INCH).sort((one, other) => one - other);
  const [short = 0, long = 0] = sides;
  if (rule.size === "exactly") {
    expect(short).toBeCloseTo(Number(rule.shortSide.value), 2);
    expect(long).toBeCloseTo(Number(rule.longSide.value), 2);
  } else {
    expect(short).toBeGreaterThanOrEqual(Number(rule.shortSide.value) - 0.001);
    expect(long).toBeGreaterThanOrEqual(Number(rule.longSide.value) - 0.001);
  }
  const inFirst = page.texts.filter(({ x, baseline, isTurned }) => !isTurned && x > left && x < right && baseline > bottom && baseline < top);
  expect(inFirst.length).toBeGreaterThan(2);
  for (const { x, width, emHeight, baseline, text } of inFirst) {
    expect(x, text).toBeGreaterThan(left);
    expect(x + width, text).toBeLessThan(right);
    expect(baseline + emHeight * CAPITAL_EM, text).toBeLessThan(top);
    expect((emHeight * CAPITAL_EM) / POINTS_AN_INCH, text).toBeGreaterThanOrEqual(Number(rule.leastLetterHeight.value) - 0.001);
  }
  const said = inFirst.map(({ text }) => text).join(" ").replaceAll(/\s+/gu, " ");
  for (const phrase of rule.words) {
    const filled = phrase.replace("{name}", "FOXTAIL TURF").replace("{phone}", "317-555-0142");
    expect(said).toContain(filled);
  }
  expect(words).not.toContain("DEMONSTRATION");
});

test("where the law asks for a phone and none is on file, there is no sign", async () => {
  await house.ask("update company set phone = null where company_id = $1", [at.company.companyId]);
  expect(await printPostingSign(house, at.company.owner.key, { visitId: illinoisVisitId })).toMatchObject({ ok: false, refusal: { kind: "conflict" } });
  expect(await printPostingSign(house, at.company.owner.key, { visitId: at.visit.visitId })).toMatchObject({ ok: true });
});
