import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { areaUnderLastMix } from "#domain/equipment/tank-hold-up";
import { settle } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { compare } from "#domain/quantities/quantity";
import { checkDensity } from "#domain/mixing/density-checks";
import { belowFirstMark, noTool, roundedBelowLowest } from "#domain/mixing/granular-mix";
import { roundedOffPlan } from "#domain/mixing/rounded-rate";
import { fittingTool, rateBecame, sprayForGround, type SprayMix, type SprayTreatment } from "#domain/mixing/spray-mix";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/** Partners in a tank from which on trouble is likely. Source: sprayers101.com/tankmix, three partners at most advised. */
const MOST_PARTNERS = 3;

/** What there is to say of a spray that was worked out: measuring, what fits, pump and hose, and who shares the tank. */
export function checkSpray(treatments: readonly SprayTreatment[], mix: SprayMix): readonly Finding[] {
  const [first] = treatments;
  return [
    ...treatments.flatMap((treatment) => checkMeasuring(treatment, mix)),
    ...checkFit(mix),
    ...(first === undefined ? [] : checkHoldUp(first.gear, mix)),
    ...checkPartners(treatments),
    ...checkDensity(treatments, mix),
  ];
}

function checkMeasuring(treatment: SprayTreatment, mix: SprayMix): readonly Finding[] {
  const { line, label, rate } = treatment;
  const became = rateBecame(treatment, mix);
  const offPlan = became === undefined ? [] : roundedOffPlan(treatment, became, "Measured out for this visit alone");
  const tool = fittingTool(treatment);
  if (tool === undefined) return [noTool(label.productName, rate.basis === "product-mass-per-area" ? "a scale" : "a cup"), ...offPlan];
  const marks = mix.loads.map(({ products }) => products.find((product) => product.line === line)?.marks);
  if (marks.includes(null)) return [belowFirstMark(label.productName, "a load", tool.name), ...offPlan];
  if (became === undefined) return [];
  const tooLow = roundedBelowLowest(treatment, became, "this visit");
  return tooLow.length > 0 ? tooLow : offPlan;
}

/** Liquids that fill the tank by themselves leave no room for water. */
function checkFit({ loads, products, gearName }: SprayMix): readonly Finding[] {
  if (loads.every(({ water }) => water.amount > 0n)) return [];
  const names = products.map(({ productName }) => productName);
  return [
    hold("office", {
      rule: "products-leave-no-water",
      source: "house",
      what: `So much of ${names.join(" and ")} is planned that no room is left for water.`,
      figure: `A load of ${gearName} is ${formatQuantity(loads[0]?.finished ?? { dimension: "volume", amount: 0n }, "us")} in all.`,
      toDo: "Look at the rate and at what the sprayer puts out per 1,000 sq ft.",
      about: [...names, gearName],
    }),
  ];
}

/**
 * What pump and hose hold goes out before what is mixed for this lawn. What that is, water or a mix, the tank plan of the
 * day knows; the ticket says what it would come to, and no more than a note of it.
 */
function checkHoldUp(gear: TicketSprayer, mix: SprayMix): readonly Finding[] {
  if (gear.holdUp === "unknown") {
    return [
      takeCare({
        rule: "hold-up-not-measured",
        source: "house",
        what: `How much pump and hose of ${gear.name} hold is not known.`,
        toDo: "Measure the hose once: what it holds goes on the next lawn first.",
        about: [gear.name],
      }),
    ];
  }
  if (gear.holdUp.amount === 0n) return [];
  const taken = sprayForGround(mix.carrier, mix.lawns);
  return [
    note({
      rule: "hold-up",
      source: "common-practice",
      what: `Pump and hose of ${gear.name} hold ${formatQuantity(gear.holdUp, "us")}: where that is water or another mix, this lawn gets it first.`,
      figure:
        compare(gear.holdUp, taken) >= 0
          ? `That is all of the ${formatQuantity(taken, "us")} of this visit.`
          : `It covers the first ${formatQuantity(settle(areaUnderLastMix(gear.holdUp, gear.carrier.rate), "nearest"), "us")}.`,
      toDo: "Where the hose does not hold this mix already, run it out until this mix comes.",
      about: [gear.name],
    }),
  ];
}

function checkPartners(tank: readonly SprayTreatment[]): readonly Finding[] {
  const names = [...new Set(tank.map(({ label }) => label.productName))];
  if (names.length < 2) return [];
  const jar = note({
    rule: "try-a-jar-first",
    source: "handbook",
    what: `${names.join(" and ")} share a tank.`,
    toDo: "Where you have not mixed them before, try them in a jar first; a label's words on mixing win.",
    citation: "Kopec, University of Arizona, May 1999: jar test",
    about: names,
  });
  if (names.length <= MOST_PARTNERS) return [jar];
  const many = takeCare({
    rule: "many-in-one-tank",
    source: "handbook",
    what: `${String(names.length)} products share a tank.`,
    figure: `No more than ${String(MOST_PARTNERS)} are advised.`,
    toDo: "Put some of them down at another visit.",
    citation: "sprayers101.com/tankmix",
    about: names,
  });
  return [many, jar];
}
