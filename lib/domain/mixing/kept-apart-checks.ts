import { daysBetween } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type Finding, hold } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { isNamedIn, type NamedIngredient } from "#domain/label/ingredient-name";
import { citationOfUse, type KeptApart, type LabelFacts } from "#domain/label/label-facts";
import { notReadOnLabel } from "#domain/label/not-read";
import { tanksOf } from "#domain/mixing/spray-mix";
import { isSprayed, type PastApplication, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * What a label keeps its product apart from: in one tank, in one visit, and for days on the same ground over the lawn's
 * history. A label says it of names of products or of active ingredients, in whole words; a salt or ester is meant by its
 * acid's name too, and iron by a guarantee of iron. What a label says of it and nobody has read holds where products share
 * a tank or a lawn on one day, and where the ingredients of the other are not on file nobody can say that they are not meant.
 */
export function checkKeptApart(question: TicketQuestion): readonly Finding[] {
  const { treatments, lawns } = question;
  const tankmates = tankmatesOf(treatments);
  return [
    ...tankmates.flatMap(({ treatment, others }) => [...unreadInTank(treatment, others), ...others.flatMap((other) => inOneTank(treatment, other))]),
    ...treatments.flatMap((treatment) => {
      const inTank = tankmates.filter((one) => one.treatment === treatment).flatMap(({ others }) => others);
      return [
        ...unreadOnOneDay(treatment, treatments.filter((other) => !inTank.includes(other))),
        ...lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).flatMap((lawn) => onOneGround(treatment, lawn, question)),
      ];
    }),
  ];
}

interface Tankmates {
  readonly treatment: TicketTreatment;
  readonly others: readonly TicketTreatment[];
}

/** Each spray with the others that go out of the same machine onto the same lawns. */
function tankmatesOf(treatments: readonly TicketTreatment[]): readonly Tankmates[] {
  return tanksOf(treatments.filter(isSprayed)).flatMap((tank) => tank.map((treatment) => ({ treatment, others: tank.filter(({ productId }) => productId !== treatment.productId) })));
}

function statedOf({ use }: TicketTreatment): readonly KeptApart[] {
  return use.keptApart === "none" || use.keptApart === "unknown" ? [] : use.keptApart.from;
}

/** What another product may be meant by: its own name, its ingredients and the acids that those are forms of, as far as they are on file. */
interface Names {
  readonly names: readonly string[];
  readonly areAllOnFile: boolean;
}

/** "Iron" is meant by "Rustwater Iron" and by an active ingredient of that name; "all others" by everything. */
function isMeant(from: string, { names, areAllOnFile }: Names): "yes" | "no" | "undecided" {
  if (from.trim().toLowerCase() === "all others" || names.some((name) => isNamedIn(from, name))) return "yes";
  return areAllOnFile ? "no" : "undecided";
}

function namesOf({ productName, activeIngredients, analysis }: LabelFacts): Names {
  const iron = typeof analysis === "string" ? "not-stated" : analysis.grade.ironPercent;
  return namesFrom(productName, activeIngredients, iron !== "not-stated" && iron.numerator > 0n);
}

function pastNames({ productName, activeIngredients, nutrients }: PastApplication): Names {
  const iron = nutrients.ok ? nutrients.value.iron : "not-stated";
  return namesFrom(productName, activeIngredients, iron !== "not-stated" && iron.amount > 0n);
}

/** A label that guarantees iron brings it, whatever its product is called. */
const IRON = "iron";

function namesFrom(productName: string, activeIngredients: readonly NamedIngredient[] | "unknown", bringsIron: boolean): Names {
  const names = bringsIron ? [productName, IRON] : [productName];
  if (activeIngredients === "unknown") return { names, areAllOnFile: false };
  return { names: [...names, ...activeIngredients.flatMap(({ name, acid }) => (acid === undefined ? [name] : [name, acid.name]))], areAllOnFile: true };
}

function unread({ label }: TicketTreatment, others: readonly TicketTreatment[], rule: string, sharing: string): Finding {
  const figure = `It shares ${sharing} with ${listWords([...new Set(others.map((other) => other.label.productName))])}.`;
  return notReadOnLabel(rule, label.productName, "from what it is kept apart", { figure });
}

function unreadInTank(treatment: TicketTreatment, others: readonly TicketTreatment[]): readonly Finding[] {
  return treatment.use.keptApart !== "unknown" || others.length === 0 ? [] : [unread(treatment, others, "tank-partners-not-read", "a tank")];
}

/** What shares a tank is asked about there. */
function unreadOnOneDay(treatment: TicketTreatment, others: readonly TicketTreatment[]): readonly Finding[] {
  if (treatment.use.keptApart !== "unknown") return [];
  const beside = others.filter(({ productId, zoneIds }) => productId !== treatment.productId && zoneIds.some((zoneId) => treatment.zoneIds.includes(zoneId)));
  return beside.length === 0 ? [] : [unread(treatment, beside, "day-partners-not-read", "a lawn on one day")];
}

function words({ label, use }: TicketTreatment) {
  return { source: "label", citation: citationOfUse(label.productName, use.useName) } as const;
}

/** Whether the label means another product can't be said, because what is in the other is not on file. */
function undecided(treatment: TicketTreatment, other: string, from: string, where: string): Finding {
  const { productName } = treatment.label;
  return hold("office", {
    ...words(treatment),
    rule: "kept-apart-undecided",
    what: `Whether ${productName} must be kept apart from ${other} can't be decided.`,
    figure: `Its label keeps it apart from ${from}${where}, and the active ingredients of ${other} are not on file.`,
    toDo: `Enter the active ingredients of ${other}, or that it has none.`,
    about: [productName, other],
  });
}

function inOneTank(treatment: TicketTreatment, other: TicketTreatment): readonly Finding[] {
  const { productName } = treatment.label;
  const judged = statedOf(treatment).filter(({ apart }) => apart === "tank").map(({ from }) => ({ from, meant: isMeant(from, namesOf(other.label)) }));
  const found = judged.find(({ meant }) => meant === "yes");
  if (found === undefined) return judged.filter(({ meant }) => meant === "undecided").slice(0, 1).map(({ from }) => undecided(treatment, other.label.productName, from, " in one tank"));
  return [
    hold("nobody", {
      ...words(treatment),
      rule: "not-in-one-tank",
      what: `${productName} may not share a tank with ${other.label.productName}.`,
      figure: `Its label keeps it apart from ${found.from}.`,
      toDo: "Put them down with two machines, or at two visits.",
      about: [productName, other.label.productName],
    }),
  ];
}

/**
 * Whether the label of what a tank held last, in one of its uses, or that of a spray that follows keeps the two out of one
 * tank, or may mean the other. What nobody has read is asked about where it is planned.
 */
export function isKeptApartInTank(held: LabelFacts, next: readonly TicketTreatment[]): boolean {
  const names = namesOf(held);
  const words = ({ keptApart }: Pick<LabelFacts["uses"][number], "keptApart">) =>
    keptApart === "none" || keptApart === "unknown" ? [] : keptApart.from.filter(({ apart }) => apart === "tank").map(({ from }) => from);
  const ofHeld = [...new Set(held.uses.flatMap(words))];
  return next.some(({ label, use }) => {
    const theirs = namesOf(label);
    return ofHeld.some((from) => isMeant(from, theirs) !== "no") || words(use).some((from) => isMeant(from, names) !== "no");
  });
}

/** Another product on the same ground, so many days away. */
interface Near {
  readonly name: string;
  readonly days: number;
  readonly meant: "yes" | "no" | "undecided";
}

/** The other products on a lawn, of the visit and of the lawn's history, with what a label's words mean of them. */
function othersOn(from: string, treatment: TicketTreatment, lawn: TicketLawn, { treatments, on }: TicketQuestion): readonly Near[] {
  const together = treatments
    .filter(({ productId, zoneIds }) => productId !== treatment.productId && zoneIds.includes(lawn.zoneId))
    .map(({ label }) => ({ name: label.productName, days: 0, meant: isMeant(from, namesOf(label)) }));
  const apart = lawn.history
    .filter(({ productId }) => productId !== treatment.productId)
    .map((past) => ({ name: past.productName, days: Math.abs(daysBetween(past.on, on)), meant: isMeant(from, pastNames(past)) }));
  return [...together, ...apart];
}

function onOneGround(treatment: TicketTreatment, lawn: TicketLawn, question: TicketQuestion): readonly Finding[] {
  return statedOf(treatment).flatMap(({ apart, from }): readonly Finding[] => {
    if (apart === "tank") return [];
    const { days } = apart;
    const near = othersOn(from, treatment, lawn, question).filter((other) => other.days < days);
    const untold = near.filter(({ meant }) => meant === "undecided").map(({ name }) => name);
    const open = [...new Set(untold)].map((name) => undecided(treatment, name, from, ` by ${daysWords(days)}`));
    const [nearest, ...rest] = near.filter(({ meant }) => meant === "yes");
    if (nearest === undefined) return open;
    return [tooNear(treatment, lawn, rest.reduce((least, one) => (one.days < least.days ? one : least), nearest), { from, days }), ...open];
  });
}

function tooNear(treatment: TicketTreatment, lawn: TicketLawn, other: Near, { from, days }: { readonly from: string; readonly days: number }): Finding {
  const { productName } = treatment.label;
  const between = other.days === 0 ? "Both go down on one day" : `${daysWords(other.days)} ${other.days === 1 ? "lies" : "lie"} between them`;
  return hold("nobody", {
    ...words(treatment),
    rule: other.days === 0 ? "not-on-one-day" : "too-near-another-product",
    what: `${productName} comes too near ${other.name} on ${lawn.name}.`,
    figure: `${between}; the label keeps it apart from ${from} by ${daysWords(days)}.`,
    toDo: "Split the visit, or move it.",
    about: [productName, lawn.name],
  });
}
