import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, gravestFirst, hold, note } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { isFertilizer, checkNutrientLaw, type ProductUnderLaw } from "#domain/rules/nutrient-law";
import { packOf } from "#domain/rules/packs-on-file";
import { type RulePack } from "#domain/rules/rule-pack";
import { checkLicense, checkSetting, checkStock } from "#domain/mixing/crew-checks";
import { addNutrients, NO_NUTRIENTS, nutrientsInProduct, type NutrientMasses } from "#domain/mixing/delivered";
import { type GranularMix, mixGranular } from "#domain/mixing/granular-mix";
import { checkHeat } from "#domain/mixing/heat-checks";
import { checkLabel } from "#domain/mixing/label-checks";
import { mixSpray, type ProductAmount, type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";
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
 * equipment and license. Sprays of one machine on the same lawns share a tank; every spread product is a pass of its
 * own. Refuses a visit without a treatment, a treatment without a lawn, and a forecast that is no temperature.
 */
export function makeMixTicket(question: TicketQuestion): Outcome<MixTicket> {
  const { treatments, lawns, on } = question;
  if (treatments.length === 0) return badInput("treatments", "none", "one or more", "Nothing is planned to be put down.");
  const homeless = treatments.find(({ zoneIds }) => !lawns.some(({ zoneId }) => zoneIds.includes(zoneId)));
  if (homeless !== undefined) {
    return badInput("zoneIds", homeless.label.productName, "one lawn or more", `${homeless.label.productName} is planned for no lawn of this property.`);
  }
  const heat = checkHeat(question);
  if (!heat.ok) return heat;
  const pack = packOf(question.state);
  const worked = workOut(question, pack);
  return accept({
    on,
    mixes: worked.mixes,
    delivered: deliveredTo(question, worked.mixes),
    findings: gravestFirst(
      eachOnce([
        ...treatments.flatMap((treatment) => checkLabel(treatment, question)),
        ...heat.value,
        ...worked.findings,
        ...checkNutrientLaw({ ...question, pack, products: treatments.map(underLaw), lawns, frozenOrSaturated: "not-looked-at" }),
        ...checkLicense(question.applicator, treatments),
        ...treatments.map(({ calibrationFinding }) => calibrationFinding),
        ...treatments.flatMap(checkSetting),
        ...neededOf(worked.mixes).flatMap(({ line, amount }) => treatments.filter((one) => one.line === line).flatMap((one) => checkStock(one, amount))),
        ...unstatedNutrients(question, worked.mixes),
      ]),
    ),
  });
}

function underLaw({ label }: TicketTreatment): ProductUnderLaw {
  const { analysis, productName } = label;
  return { name: productName, grade: analysis === "none" || analysis === "unknown" ? analysis : analysis.grade };
}

/** Findings that say the same of the same are said once. */
function eachOnce(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Map(findings.map((finding) => [JSON.stringify(finding), finding]));
  return [...seen.values()];
}

interface Worked {
  readonly mixes: readonly (GranularMix | SprayMix)[];
  readonly findings: readonly Finding[];
}

function workOut(question: TicketQuestion, pack: RulePack | undefined): Worked {
  const mixes: (GranularMix | SprayMix)[] = [];
  const findings: Finding[] = [];
  for (const treatment of question.treatments.filter(isSpread)) {
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
  for (const tank of tanksOf(question.treatments.filter(isSprayed))) {
    const treated = tank.map((treatment) => treatedLawns(treatment, question.lawns, pack));
    findings.push(...treated.flatMap((one) => one.findings));
    const lawns = smallestAreas(treated.map((one) => one.lawns));
    if (lawns.every(({ treatedArea }) => treatedArea.amount === 0n)) continue;
    const worked = mixSpray(tank, lawns, question.settings);
    mixes.push(worked.mix);
    findings.push(...worked.findings, ...sharedTank(tank));
  }
  return { mixes, findings };
}

/** Sprays of one machine on the same lawns go into one tank. */
function tanksOf(treatments: readonly SprayTreatment[]): readonly (readonly SprayTreatment[])[] {
  const tanks = new Map<string, SprayTreatment[]>();
  for (const treatment of treatments) {
    const key = JSON.stringify([treatment.gear.equipmentId, treatment.zoneIds.toSorted()]);
    tanks.set(key, [...(tanks.get(key) ?? []), treatment]);
  }
  return [...tanks.values()];
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

function sharedTank(tank: readonly SprayTreatment[]): readonly Finding[] {
  if (tank.length < 2) return [];
  const names = tank.map(({ label }) => label.productName);
  return [
    note({
      rule: "try-a-jar-first",
      source: "handbook",
      what: `${names.join(" and ")} share a tank.`,
      toDo: "Where you have not mixed them before, try them in a jar first; a label's words on mixing win.",
      citation: "Kopec, University of Arizona, May 1999: jar test",
      about: names,
    }),
  ];
}

interface Needed {
  readonly line: number;
  readonly amount: ProductAmount;
}

/** What the visit takes of each product. */
export function neededOf(mixes: MixTicket["mixes"]): readonly Needed[] {
  return mixes.flatMap((mix): readonly Needed[] =>
    mix.kind === "granular" ? [{ line: mix.line, amount: mix.total }] : mix.products.map(({ line, total }) => ({ line, amount: total })),
  );
}

function amountsOn(zoneId: string, mixes: MixTicket["mixes"]): readonly Needed[] {
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

/** What could not be counted among the nutrients says so: a sum without it is no sum. */
function unstatedNutrients({ treatments }: TicketQuestion, mixes: MixTicket["mixes"]): readonly Finding[] {
  return neededOf(mixes).flatMap(({ line, amount }) => {
    const treatment = treatments.find((one) => one.line === line);
    if (treatment === undefined || !isFertilizer(underLaw(treatment))) return [];
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
