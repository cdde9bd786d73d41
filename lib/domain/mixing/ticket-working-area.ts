import { type Finding } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { type Working, type WorkingInput } from "#domain/foundation/working";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { of } from "#domain/quantities/quantity";
import { multiplyExact } from "#domain/quantities/exact-quantity";
import { partOfShare, shareWords } from "#domain/quantities/share";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type TicketLawn, type TicketQuestion } from "#domain/mixing/ticket-question";
import { inUnit, sumLine, timesIn } from "#domain/mixing/ticket-working-words";
import { type TreatedLawn } from "#domain/mixing/treated-area";

const ORIGIN_WORDS: Readonly<Record<TicketLawn["areaOrigin"], string>> = {
  measured: "measured piece by piece, less what was taken off",
  entered: "entered by hand",
  imported: "from an imported list",
};

const COMPANY_WORDS = "what the crew keeps clear";
const LAW_WORDS = "the state’s law";

const ACRE = of("acre", 1n);

/** Lawn and name of an amount's place: "A Front". */
export function placeOf({ letter, name }: Pick<TreatedLawn, "letter" | "name">): string {
  return `${letter} ${name}`;
}

/**
 * How the treated area of a lawn comes about: the lawn less each strip that is kept clear of water, and in acres where
 * the page shows acres. The strips are the ticket's own; a ticket that names none says only their sum.
 */
export function treatedAreaWorking(lawn: TreatedLawn, productNames: readonly string[], question: TicketQuestion, findings: MixTicket["findings"]): Working {
  const { lawnArea, treatedArea, keptClear, spot, strips = [] } = lawn;
  const treatable = spot?.treatable ?? treatedArea;
  const onFile = question.lawns.find(({ zoneId }) => zoneId === lawn.zoneId);
  const asks = findings.filter(({ rule, about }) => rule === "distance-to-water" && about.includes(lawn.name) && productNames.some((name) => about.includes(name)));
  const cited = new Set(strips.flatMap(({ citation }) => citation ?? []));
  const written = cited.size > 0 ? [...cited] : asks.slice(0, 1).map(({ citation }) => citation ?? LAW_WORDS);
  const shown = formatQuantity(treatedArea, "us");
  const keeps = keptClear.amount > 0n;
  const isLeft = treatedArea.amount > 0n;
  return {
    title: `Treated area of ${placeOf(lawn)} for ${listWords(productNames)}`,
    formula: formulaOf(keeps, spot !== undefined),
    inputs: [
      { name: "Lawn", figure: inUnit(lawnArea, "sq ft"), ...(onFile === undefined ? {} : { from: ORIGIN_WORDS[onFile.areaOrigin] }) },
      ...strips.flatMap((strip) => stripInputs(strip, onFile, asks[0])),
      ...(keeps && strips.length === 0 ? [{ name: "Kept clear", figure: inUnit(keptClear, "sq ft") }] : []),
      ...(spot === undefined ? [] : [{ name: "Spot work on", figure: shareWords(spot.shareBasisPoints), from: "the plan’s share of the lawn" }]),
    ],
    steps: [
      ...strips.map(({ length, width, area }) => `${inUnit(length, "ft")} × ${inUnit(width, "ft")} = ${inUnit(area, "sq ft")}`),
      ...(strips.length > 1 ? [sumLine(strips.map(({ area }) => area), keptClear, "sq ft")] : []),
      ...(keeps && isLeft ? [`${inUnit(lawnArea, "sq ft")} − ${inUnit(keptClear, "sq ft")} = ${inUnit(treatable, "sq ft")}`] : []),
      ...(spot !== undefined && isLeft ? [`${inUnit(treatable, "sq ft")} × ${shareWords(spot.shareBasisPoints)} = ${inUnit(multiplyExact(treatable, partOfShare(spot.shareBasisPoints)), "sq ft")}`] : []),
      ...(isLeft ? [] : ["Nothing of the lawn is left to treat."]),
      ...(shown.includes("acre") ? [`${timesIn(treatedArea, ACRE, "sq ft")} acres`] : []),
    ],
    result: shown,
    source: written.length === 0 ? "common practice" : `${listWords(written)}, and common practice`,
  };
}

function formulaOf(keeps: boolean, isSpot: boolean): string {
  if (isSpot) return keeps ? "treated area = (lawn − length × width of each strip along water) × the share of spot work" : "treated area = lawn × the share of spot work";
  return keeps ? "treated area = lawn − length × width of each strip along water" : "treated area = the whole lawn; nothing of it is kept clear of water";
}

function stripInputs(strip: NonNullable<TreatedLawn["strips"]>[number], lawn: TicketLawn | undefined, law: Finding | undefined): readonly WorkingInput[] {
  if (strip.whose !== undefined) return stripWords(strip, strip.whose === "company" ? COMPANY_WORDS : (strip.citation ?? LAW_WORDS));
  // A ticket from before strips said whose width they have: what is not the lawn's own entry was the law's.
  const entered = lawn?.waterEdges.find(({ name }) => name === strip.name)?.width;
  const isEntered = entered !== undefined && entered !== "unknown" && entered.amount === strip.width.amount;
  return stripWords(strip, isEntered ? COMPANY_WORDS : (law?.citation ?? LAW_WORDS));
}

function stripWords(strip: NonNullable<TreatedLawn["strips"]>[number], from: string): readonly WorkingInput[] {
  return [
    { name: `Along ${strip.name}`, figure: inUnit(strip.length, "ft"), from: "measured" },
    { name: `Kept clear of ${strip.name}`, figure: inUnit(strip.width, "ft"), from },
  ];
}
