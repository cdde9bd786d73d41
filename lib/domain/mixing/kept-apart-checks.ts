import { daysBetween } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type Finding, hold } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { citationOfUse, type KeptApart, type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { notReadOnLabel } from "#domain/label/not-read";
import { isMeant, type Meant, type MeantProduct, type NotTold } from "#domain/mixing/kept-apart-meaning";
import { tanksOf } from "#domain/mixing/spray-mix";
import { isSprayed, type PastApplication, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * What a label keeps its product apart from: in one tank, in one visit, and for days on the same ground over the lawn's
 * history, whichever of the two labels says so. What its words mean is isMeant's to say. What a label says of it and nobody
 * has read holds where products share a tank or a lawn on one day, and where a fact of the other is not on file nobody can
 * say that it is not meant.
 */
export function checkKeptApart(question: TicketQuestion): readonly Finding[] {
  const { treatments, lawns } = question;
  const tankmates = tankmatesOf(treatments);
  return [
    ...tankmates.flatMap(({ treatment, others }) => [...unreadInTank(treatment, others), ...others.flatMap((other) => inOneTank(treatment, other))]),
    ...treatments.flatMap((treatment) => {
      const inTank = tankmates.filter((one) => one.treatment === treatment).flatMap(({ others }) => others);
      const ground = lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId));
      return [
        ...unreadOnOneDay(treatment, treatments.filter((other) => !inTank.includes(other)), ground, question),
        ...ground.flatMap((lawn) => [...onOneGround(treatment, lawn, question), ...byLabelsBefore(treatment, lawn, question)]),
      ];
    }),
    ...unreadBefore(question),
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

function statedOf({ keptApart }: Pick<LabelUse, "keptApart">): readonly KeptApart[] {
  return keptApart === "none" || keptApart === "unknown" ? [] : keptApart.from;
}

function inTankOf(use: Pick<LabelUse, "keptApart">): readonly string[] {
  return statedOf(use).flatMap(({ apart, from }) => (apart === "tank" ? [from] : []));
}

interface ByDays {
  readonly from: string;
  readonly days: number;
}

function byDaysOf(use: Pick<LabelUse, "keptApart">): readonly ByDays[] {
  return statedOf(use).flatMap(({ apart, from }) => (apart === "tank" ? [] : [{ from, days: apart.days }]));
}

function productOfLabel(label: LabelFacts): MeantProduct {
  const { productName, activeIngredients, uses } = label;
  return { productName, activeIngredients, serviceTypes: uses.map(({ serviceType }) => serviceType), classFacts: label };
}

function plannedProduct({ label, use }: TicketTreatment): MeantProduct {
  const ofLabel = productOfLabel(label);
  return { ...ofLabel, serviceTypes: [use.serviceType, ...ofLabel.serviceTypes] };
}

function pastProduct({ productName, activeIngredients, serviceType, label }: PastApplication): MeantProduct {
  return { productName, activeIngredients, serviceTypes: label === "unknown" ? [serviceType] : [serviceType, ...label.serviceTypes], classFacts: label };
}

function unread(productName: string, others: readonly string[], rule: string, sharing: string): Finding {
  return notReadOnLabel(rule, productName, "from what it is kept apart", { figure: `It shares ${sharing} with ${listWords([...new Set(others)])}.` });
}

function unreadInTank({ label, use }: TicketTreatment, others: readonly TicketTreatment[]): readonly Finding[] {
  if (use.keptApart !== "unknown" || others.length === 0) return [];
  return [unread(label.productName, others.map((other) => other.label.productName), "tank-partners-not-read", "a tank")];
}

const ON_ONE_DAY = ["day-partners-not-read", "a lawn on one day"] as const;

/** What shares a tank is asked about there. */
function unreadOnOneDay({ label, use, productId, zoneIds }: TicketTreatment, others: readonly TicketTreatment[], ground: readonly TicketLawn[], { on }: TicketQuestion): readonly Finding[] {
  if (use.keptApart !== "unknown") return [];
  const planned = others.filter((other) => other.productId !== productId && other.zoneIds.some((zoneId) => zoneIds.includes(zoneId))).map((other) => other.label.productName);
  const done = ground.flatMap(({ history }) => history.filter((past) => past.on === on && past.productId !== productId).map(({ productName }) => productName));
  const beside = [...planned, ...done];
  return beside.length === 0 ? [] : [unread(label.productName, beside, ...ON_ONE_DAY)];
}

/** What another visit of the day put down, and nobody has read from what it is kept apart. */
function unreadBefore({ treatments, lawns, on }: TicketQuestion): readonly Finding[] {
  const open = lawns.flatMap(({ zoneId, history }) =>
    history
      .filter((past) => past.on === on && (past.putDownAs.length === 0 || past.putDownAs.some(({ keptApart }) => keptApart === "unknown")))
      .flatMap(({ productId, productName }) => treatments.filter((one) => one.productId !== productId && one.zoneIds.includes(zoneId)).map(({ label }) => ({ productName, beside: label.productName }))),
  );
  return [...new Set(open.map(({ productName }) => productName))].map((name) => unread(name, open.filter(({ productName }) => productName === name).map(({ beside }) => beside), ...ON_ONE_DAY));
}

/** The label that keeps its product apart. */
interface Speaker {
  readonly productName: string;
  readonly useName: string;
}

function plannedSpeaker({ label: { productName }, use: { useName } }: TicketTreatment): Speaker {
  return { productName, useName };
}

function words({ productName, useName }: Speaker) {
  return { source: "label", citation: citationOfUse(productName, useName) } as const;
}

const UNDECIDED = "kept-apart-undecided";

/** Whether the label means another product can't be said, because a fact is not on file. */
function undecided(speaker: Speaker, other: string, fromWhat: string, { missing, toDo }: NotTold): Finding {
  const { productName } = speaker;
  return hold("office", {
    ...words(speaker),
    rule: UNDECIDED,
    what: `Whether ${productName} must be kept apart from ${other} can't be decided.`,
    figure: `Its label keeps it apart from ${fromWhat}, and ${missing}.`,
    toDo,
    about: [productName, other],
  });
}

function inOneTank(treatment: TicketTreatment, other: TicketTreatment): readonly Finding[] {
  const speaker = plannedSpeaker(treatment);
  const otherName = other.label.productName;
  const judged = inTankOf(treatment.use).map((from) => ({ from, meant: isMeant(from, plannedProduct(other)) }));
  const found = judged.find(({ meant }) => meant === "yes");
  if (found === undefined) return judged.flatMap(({ from, meant }) => (isTold(meant) ? [] : [undecided(speaker, otherName, `${from} in one tank`, meant)])).slice(0, 1);
  return [
    hold("nobody", {
      ...words(speaker),
      rule: "not-in-one-tank",
      what: `${speaker.productName} may not share a tank with ${otherName}.`,
      figure: `Its label keeps it apart from ${found.from}.`,
      toDo: "Put them down with two machines, or at two visits.",
      about: [speaker.productName, otherName],
    }),
  ];
}

function isTold(meant: Meant): meant is "yes" | "no" {
  return typeof meant === "string";
}

/**
 * Whether the label of what a tank held last, in one of its uses, or that of a spray that follows keeps the two out of one
 * tank, or may mean the other. What nobody has read is asked about where it is planned.
 */
export function isKeptApartInTank(held: LabelFacts, next: readonly TicketTreatment[]): boolean {
  const heldProduct = productOfLabel(held);
  const ofHeld = [...new Set(held.uses.flatMap(inTankOf))];
  return next.some((treatment) => {
    const following = plannedProduct(treatment);
    return ofHeld.some((from) => isMeant(from, following) !== "no") || inTankOf(treatment.use).some((from) => isMeant(from, heldProduct) !== "no");
  });
}

/** Another product on the same ground, so many days away. */
interface Near {
  readonly name: string;
  readonly days: number;
}

/** What of a lawn's history is no treatment's own product, the nearest first. */
function othersBefore({ productId }: TicketTreatment, history: TicketLawn["history"], { on }: TicketQuestion): readonly (Near & { readonly past: PastApplication })[] {
  return history
    .filter((past) => past.productId !== productId)
    .map((past) => ({ name: past.productName, days: Math.abs(daysBetween(past.on, on)), past }))
    .toSorted((one, other) => one.days - other.days);
}

function byDaysWords({ from, days }: ByDays): string {
  return `${from} by ${daysWords(days)}`;
}

/** What a treatment's own label keeps it apart from, of the visit and of the lawn's history. */
function onOneGround(treatment: TicketTreatment, lawn: TicketLawn, question: TicketQuestion): readonly Finding[] {
  const stated = byDaysOf(treatment.use);
  if (stated.length === 0) return [];
  const together = question.treatments.filter(({ productId, zoneIds }) => productId !== treatment.productId && zoneIds.includes(lawn.zoneId));
  const others = [
    ...together.map((other) => ({ name: other.label.productName, days: 0, product: plannedProduct(other) })),
    ...othersBefore(treatment, lawn.history, question).map(({ past, ...near }) => ({ ...near, product: pastProduct(past) })),
  ];
  const speaker = plannedSpeaker(treatment);
  return stated.flatMap((apart): readonly Finding[] => {
    const near = others.filter(({ days }) => days < apart.days).map((other) => ({ ...other, meant: isMeant(apart.from, other.product) }));
    const open = new Map(near.flatMap(({ name, meant }) => (isTold(meant) ? [] : [[name, undecided(speaker, name, byDaysWords(apart), meant)] as const])));
    const nearest = near.find(({ meant }) => meant === "yes");
    return [...(nearest === undefined ? [] : [tooNear(treatment, lawn, nearest, speaker, apart)]), ...open.values()];
  });
}

/** What labels of the lawn's history keep their products apart from: of each product the nearest that surely says so, or else may. */
function byLabelsBefore(treatment: TicketTreatment, lawn: TicketLawn, question: TicketQuestion): readonly Finding[] {
  // Most labels of most histories keep apart from nothing.
  const speaking = lawn.history.filter(({ putDownAs }) => putDownAs.some((use) => statedOf(use).length > 0));
  if (speaking.length === 0) return [];
  const planned = plannedProduct(treatment);
  const said = othersBefore(treatment, speaking, question).flatMap(({ past, ...near }) => byLabelBefore(treatment, lawn, { past, near, planned }).map((finding) => ({ productId: past.productId, finding })));
  const sureFirst = [...said.filter(({ finding }) => finding.rule !== UNDECIDED), ...said];
  return [...new Set(said.map(({ productId }) => productId))].flatMap((productId) => sureFirst.find((one) => one.productId === productId)?.finding ?? []);
}

interface Before {
  readonly past: PastApplication;
  readonly near: Near;
  readonly planned: MeantProduct;
}

/** Where nobody knows under which use it was put down, only what all of them say is sure. */
function byLabelBefore(treatment: TicketTreatment, lawn: TicketLawn, { past, near, planned }: Before): readonly Finding[] {
  const judged = past.putDownAs.map((use) => ({
    speaker: { productName: past.productName, useName: use.useName },
    stated: byDaysOf(use).filter(({ days }) => near.days < days).map((apart) => ({ apart, meant: isMeant(apart.from, planned) })),
  }));
  const all = judged.flatMap(({ speaker, stated }) => stated.map((one) => ({ ...one, speaker })));
  const meant = all.find((one) => one.meant === "yes");
  if (meant !== undefined && judged.every(({ stated }) => stated.some((one) => one.meant === "yes"))) return [tooNear(treatment, lawn, near, meant.speaker, meant.apart)];
  if (meant !== undefined) return [undecided(meant.speaker, planned.productName, byDaysWords(meant.apart), useNotTold(past.productName))];
  return all.flatMap((one) => (isTold(one.meant) ? [] : [undecided(one.speaker, planned.productName, byDaysWords(one.apart), one.meant)]));
}

function useNotTold(productName: string): NotTold {
  return { missing: `under which use of its label ${productName} was put down is not on file`, toDo: "Look up which use it was: not all of them say so." };
}

function tooNear(treatment: TicketTreatment, lawn: TicketLawn, other: Near, speaker: Speaker, apart: ByDays): Finding {
  const { productName } = treatment.label;
  const between = other.days === 0 ? "Both go down on one day" : `${daysWords(other.days)} ${other.days === 1 ? "lies" : "lie"} between them`;
  const whose = speaker.productName === productName ? "the label keeps it" : `the label of ${speaker.productName} keeps that`;
  return hold("nobody", {
    ...words(speaker),
    rule: other.days === 0 ? "not-on-one-day" : "too-near-another-product",
    what: `${productName} comes too near ${other.name} on ${lawn.name}.`,
    figure: `${between}; ${whose} apart from ${byDaysWords(apart)}.`,
    toDo: "Split the visit, or move it.",
    about: [productName, lawn.name],
  });
}
