import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, gravestFirst, hold } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, type InputRefusal, type Outcome } from "#domain/foundation/outcome";
import { refuseOutOfRange } from "#domain/turf/physical-range";
import { highRange } from "#domain/weather/forecast-high";
import { checkNutrientLaw, type ProductOnLawns } from "#domain/rules/nutrient-law";
import { packOf } from "#domain/rules/packs-on-file";
import { type RulePack } from "#domain/rules/rule-pack";
import { checkLicense, checkLicenseCategory, checkSetting, checkStock } from "#domain/mixing/crew-checks";
import { addNutrients, NO_NUTRIENTS, nutrientsInProduct, type NutrientMasses } from "#domain/mixing/delivered";
import { type GranularMix, mixGranular } from "#domain/mixing/granular-mix";
import { checkHeat } from "#domain/mixing/heat-checks";
import { checkIngredients } from "#domain/mixing/ingredient-checks";
import { checkKeptApart } from "#domain/mixing/kept-apart-checks";
import { checkLabel } from "#domain/mixing/label-checks";
import { checkLawns } from "#domain/mixing/lawn-checks";
import { checkNitrogen } from "#domain/mixing/nitrogen-checks";
import { checkPhosphate } from "#domain/mixing/phosphate-checks";
import { checkResistance } from "#domain/mixing/resistance-checks";
import { treatmentsForRounding } from "#domain/mixing/rounding-room";
import { checkSite } from "#domain/mixing/site-checks";
import { checkSpray } from "#domain/mixing/spray-checks";
import { mixSpray, type ProductAmount, type SprayMix, tanksOf } from "#domain/mixing/spray-mix";
import { isSprayed, isSpread, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { type TreatedLawn, treatedLawns } from "#domain/mixing/treated-area";

/** What one lawn gets of nutrients from everything that goes down in the visit. */
export interface DeliveredLawn {
  readonly zoneId: string;
  readonly name: string;
  readonly nutrients: NutrientMasses;
}

/** What one visit puts down, worked out whole: amounts, loads, nutrients, and what every check says of it. */
export interface MixTicket {
  readonly on: CalendarDate;
  readonly mixes: readonly (GranularMix | SprayMix)[];
  readonly delivered: readonly DeliveredLawn[];
  /** The gravest first. A hold keeps the ticket from being issued; nothing keeps the truth from being recorded. */
  readonly findings: readonly Finding[];
}

/**
 * Works out what to put down at one visit and checks it against labels, the state's law on file, the weather, stock,
 * equipment and license. Sprays of one machine at one output on the same lawns share a tank; every spread product is a
 * pass of its own. Refuses a visit without a treatment (`treatments`), a treatment without a lawn or for one that is
 * not of the visit (`zoneIds`), and a forecast or a setting for heat that is no temperature of outdoor air, at its own
 * field. Throws where two treatments have one line, or one lawn is there twice.
 */
export function makeMixTicket(question: TicketQuestion): Outcome<MixTicket> {
  const refusal = refuseHomeless(question);
  if (refusal !== undefined) return { ok: false, refusal };
  const unsettled = refuseSettings(question);
  if (unsettled !== undefined) return unsettled;
  const heat = checkHeat(question);
  if (!heat.ok) return heat;
  const pack = packOf(question.state);
  const worked = workOut(question, pack);
  return accept({
    on: question.on,
    mixes: worked.mixes,
    delivered: deliveredTo(question, worked.mixes),
    findings: gravestFirst(eachOnce(allFindings(question, pack, worked, heat.value))),
  });
}

function refuseHomeless({ treatments, lawns }: TicketQuestion): InputRefusal | undefined {
  const refused = (field: string, found: string, allowed: string, sentence: string): InputRefusal => ({ kind: "bad-input", field, found, allowed, sentence });
  if (treatments.length === 0) return refused("treatments", "none", "one or more", "Nothing is planned to be put down.");
  const zoneIds = new Set(lawns.map(({ zoneId }) => zoneId));
  invariant(zoneIds.size === lawns.length, "every lawn of a visit is there once");
  invariant(new Set(treatments.map(({ line }) => line)).size === treatments.length, "every treatment of a visit has a line of its own");
  const homeless = treatments.find((treatment) => treatment.zoneIds.length === 0 || treatment.zoneIds.some((zoneId) => !zoneIds.has(zoneId)));
  if (homeless === undefined) return undefined;
  const { productName } = homeless.label;
  const isNowhere = !homeless.zoneIds.some((zoneId) => zoneIds.has(zoneId));
  const sentence = isNowhere ? `${productName} is planned for no lawn of this property.` : `${productName} is planned for a lawn that is not part of this visit.`;
  return refused("zoneIds", productName, "lawns of this visit, one or more", sentence);
}

function refuseSettings({ settings: { heatCautionFromF, heatCautionWarmFromF } }: TicketQuestion): Outcome<never> | undefined {
  return refuseOutOfRange([
    highRange("heatCautionFromF", "The heat from which on the company takes care", heatCautionFromF),
    highRange("heatCautionWarmFromF", "The heat from which on the company takes care of warm-season turf", heatCautionWarmFromF),
  ]);
}

function allFindings(question: TicketQuestion, pack: RulePack | undefined, worked: Worked, heat: readonly Finding[]): readonly Finding[] {
  const { treatments, lawns, settings, applicator } = question;
  const products = treatments.map((treatment) => underLaw(treatment, lawns));
  const law = checkNutrientLaw({ state: question.state, pack, on: question.on, products, frozenOrSaturated: "not-looked-at" });
  return [
    ...treatments.flatMap((treatment) => checkLabel(treatment, question)),
    ...checkLawns(question),
    ...checkResistance(question),
    ...checkKeptApart(question),
    ...checkSite(question),
    ...checkNitrogen(question, pack),
    ...checkPhosphate(question, pack),
    ...heat,
    ...worked.findings,
    ...law,
    ...checkLicense(applicator, treatments),
    ...checkLicenseCategory(applicator, treatments, question.state, pack),
    ...treatments.map(({ calibrationFinding }) => calibrationFinding),
    ...treatments.flatMap((treatment) => checkSetting(treatment, settings)),
    ...stockFindings(treatments, worked.mixes),
    ...unstatedNutrients(question, worked.mixes, law),
    ...treatments.flatMap((treatment) => checkIngredients(treatment, treatments)),
  ];
}

function underLaw({ label, zoneIds }: TicketTreatment, lawns: TicketQuestion["lawns"]): ProductOnLawns {
  const { analysis, productName } = label;
  return {
    name: productName,
    grade: analysis === "none" || analysis === "unknown" ? analysis : analysis.grade,
    lawns: lawns.filter(({ zoneId }) => zoneIds.includes(zoneId)),
  };
}

/** Of each product all that the visit takes, in whatever tanks and passes, against what is on hand. */
function stockFindings(treatments: readonly TicketTreatment[], mixes: MixTicket["mixes"]): readonly Finding[] {
  const needed = neededTreatments(mixes, treatments);
  return needed.flatMap(({ treatment, amount }) => {
    const total = needed
      .filter((other) => other.treatment.productId === treatment.productId && other.amount.dimension === amount.dimension)
      .reduce((sum, other) => sum + other.amount.amount, 0n);
    return checkStock(treatment, amount.dimension === "mass" ? { dimension: "mass", amount: total } : { dimension: "volume", amount: total });
  });
}

/** Findings that say the same in the same words are said once, about everything that they are said of. */
function eachOnce(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Map<string, Finding>();
  for (const finding of findings) {
    const words = wordsOf(finding);
    const before = seen.get(words);
    const isAlone = before === undefined && finding.about.length < 2;
    seen.set(words, isAlone ? finding : { ...finding, about: [...new Set([...(before?.about ?? []), ...finding.about])] });
  }
  return [...seen.values()];
}

/** All that a finding says, without what it says it of. */
function wordsOf(finding: Finding): string {
  const { level, rule, source, what, figure = "", toDo = "", citation = "" } = finding;
  const answerableBy = finding.level === "hold" ? finding.answerableBy : "";
  return `${level}\n${answerableBy}\n${rule}\n${source}\n${what}\n${figure}\n${toDo}\n${citation}`;
}

interface Worked {
  readonly mixes: readonly (GranularMix | SprayMix)[];
  readonly findings: readonly Finding[];
}

function workOut(question: TicketQuestion, pack: RulePack | undefined): Worked {
  const mixes: (GranularMix | SprayMix)[] = [];
  const findings: Finding[] = [];
  const treatments = treatmentsForRounding(question);
  for (const treatment of treatments.filter(isSpread)) {
    const treated = treatedLawns(treatment, question.lawns, pack);
    findings.push(...treated.findings);
    if (treatment.rate.basis !== "product-mass-per-area") {
      findings.push(notByWeight(treatment));
      continue;
    }
    const worked = mixGranular(treatment, treatment.rate, treated.lawns, question.settings);
    mixes.push(worked.mix);
    findings.push(...worked.findings);
  }
  for (const tank of tanksOf(treatments.filter(isSprayed))) {
    const treated = tank.map((treatment) => treatedLawns(treatment, question.lawns, pack));
    findings.push(...treated.flatMap((one) => one.findings));
    const lawns = smallestAreas(treated.map((one) => one.lawns));
    if (lawns.every(({ treatedArea }) => treatedArea.amount === 0n)) continue;
    const worked = mixSpray(tank, lawns, question.settings);
    findings.push(...worked.findings);
    if (worked.mix === undefined) continue;
    mixes.push(worked.mix);
    findings.push(...checkSpray(tank, worked.mix));
  }
  return { mixes, findings };
}

/** What is in one tank goes on one area: the smallest that any of its products leaves. */
function smallestAreas(perTreatment: readonly (readonly TreatedLawn[])[]): readonly TreatedLawn[] {
  const [first = [], ...others] = perTreatment;
  return first.map((lawn) =>
    others
      .flatMap((lawns) => lawns.filter(({ zoneId }) => zoneId === lawn.zoneId))
      .reduce((smallest, other) => (other.treatedArea.amount < smallest.treatedArea.amount ? other : smallest), lawn),
  );
}

function notByWeight({ label, gear }: TicketTreatment): Finding {
  return hold("office", {
    rule: "rate-for-a-spreader",
    source: "house",
    what: `${label.productName} is planned by volume and put down with ${gear.name}.`,
    toDo: "Plan it by weight, or take a sprayer.",
    about: [label.productName, gear.name],
  });
}

/** An amount of one line's product. */
export interface Needed {
  readonly line: number;
  readonly amount: ProductAmount;
}

/** What the visit takes of each product. */
export function neededOf(mixes: MixTicket["mixes"]): readonly Needed[] {
  return mixes.flatMap((mix): readonly Needed[] =>
    mix.kind === "granular" ? [{ line: mix.line, amount: mix.total }] : mix.products.map(({ line, total }) => ({ line, amount: total })),
  );
}

/** What the visit takes of each product, with the treatment that asks for it. */
export function neededTreatments(
  mixes: MixTicket["mixes"],
  treatments: readonly TicketTreatment[],
): readonly { readonly treatment: TicketTreatment; readonly amount: ProductAmount }[] {
  return neededOf(mixes).flatMap(({ line, amount }) => treatments.filter((one) => one.line === line).map((treatment) => ({ treatment, amount })));
}

/** What a lawn gets of each product, over all mixes. */
export function amountsOn(zoneId: string, mixes: MixTicket["mixes"]): readonly Needed[] {
  return mixes.flatMap((mix): readonly Needed[] => {
    if (mix.kind === "spray") return mix.lawns.filter((lawn) => lawn.zoneId === zoneId).flatMap(({ products }) => products);
    return mix.lawns.filter((lawn) => lawn.zoneId === zoneId).map(({ amount }) => ({ line: mix.line, amount }));
  });
}

function deliveredTo({ lawns, treatments }: TicketQuestion, mixes: MixTicket["mixes"]): readonly DeliveredLawn[] {
  return lawns.map(({ zoneId, name }) => {
    const nutrients = amountsOn(zoneId, mixes).reduce((total, { line, amount }) => {
      const treatment = treatments.find((one) => one.line === line);
      const brought = treatment === undefined ? undefined : nutrientsInProduct(treatment.label, amount);
      return brought?.ok === true ? addNutrients(total, brought.value) : total;
    }, NO_NUTRIENTS);
    return { zoneId, name, nutrients };
  });
}

/** What could not be counted among the nutrients says so: a sum without it is no sum. What the law said already is not said again. */
function unstatedNutrients({ treatments }: TicketQuestion, mixes: MixTicket["mixes"], law: readonly Finding[]): readonly Finding[] {
  const isSaid = (productName: string) => law.some(({ rule, about }) => rule === "analysis-not-read" && about.includes(productName));
  return neededOf(mixes).flatMap(({ line, amount }) => {
    const treatment = treatments.find((one) => one.line === line);
    if (treatment === undefined || isSaid(treatment.label.productName)) return [];
    const brought = nutrientsInProduct(treatment.label, amount);
    if (brought === undefined || brought.ok) return [];
    return [
      hold("office", {
        rule: "nutrients-not-countable",
        source: "house",
        what: `What ${treatment.label.productName} brings of nutrients can't be counted.`,
        figure: brought.refusal.sentence,
        toDo: "Enter what is missing from its label.",
        about: [treatment.label.productName],
      }),
    ];
  });
}
