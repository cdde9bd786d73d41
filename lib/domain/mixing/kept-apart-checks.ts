import { daysBetween } from "#domain/foundation/calendar-date";
import { type Finding, hold } from "#domain/foundation/finding";
import { type KeptApart, type LabelFacts } from "#domain/label/label-facts";
import { tanksOf } from "#domain/mixing/spray-mix";
import { isSprayed, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * What a label keeps its product apart from: in one tank, in one visit, and for days on the same ground over the lawn's
 * history. A label says it of names of products or of active ingredients, whole or in part. What a label says of mixing
 * and nobody has read holds where products share a tank.
 */
export function checkKeptApart(question: TicketQuestion): readonly Finding[] {
  const { treatments, lawns } = question;
  return [
    ...tankmatesOf(treatments).flatMap(({ treatment, others }) => [...unreadInTank(treatment, others), ...others.flatMap((other) => inOneTank(treatment, other))]),
    ...treatments.flatMap((treatment) => lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).flatMap((lawn) => onOneGround(treatment, lawn, question))),
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

/** "Iron" is meant by "Rustwater Iron" and by an active ingredient of that name; "all others" by everything. */
function isMeant(from: string, names: readonly string[]): boolean {
  const wanted = from.trim().toLowerCase();
  return wanted === "all others" || names.some((name) => name.toLowerCase().includes(wanted));
}

function namesOf({ productName, activeIngredients }: LabelFacts): readonly string[] {
  return [productName, ...(activeIngredients === "unknown" ? [] : activeIngredients.map(({ name }) => name))];
}

function unreadInTank({ label, use }: TicketTreatment, others: readonly TicketTreatment[]): readonly Finding[] {
  if (use.keptApart !== "unknown" || others.length === 0) return [];
  return [
    hold("office", {
      rule: "tank-partners-not-read",
      source: "label",
      what: `It has not been entered from the label of ${label.productName} from what it is kept apart.`,
      figure: `It shares a tank with ${others.map((other) => other.label.productName).join(" and ")}.`,
      toDo: "Read the label and enter what it states, or that it states nothing.",
      about: [label.productName],
    }),
  ];
}

function words({ label, use }: TicketTreatment) {
  return { source: "label", citation: `label of ${label.productName}, ${use.useName}` } as const;
}

function inOneTank(treatment: TicketTreatment, other: TicketTreatment): readonly Finding[] {
  const { productName } = treatment.label;
  const found = statedOf(treatment).find(({ apart, from }) => apart === "tank" && isMeant(from, namesOf(other.label)));
  if (found === undefined) return [];
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

function onOneGround(treatment: TicketTreatment, lawn: TicketLawn, { treatments, on }: TicketQuestion): readonly Finding[] {
  const { productName } = treatment.label;
  const apart = statedOf(treatment).flatMap(({ apart: kept, from }) => (kept === "tank" ? [] : [{ from, days: kept.days }]));
  return apart.flatMap(({ from, days }): readonly Finding[] => {
    const together = treatments
      .filter(({ productId, zoneIds, label }) => productId !== treatment.productId && zoneIds.includes(lawn.zoneId) && isMeant(from, namesOf(label)))
      .map(({ label }) => ({ name: label.productName, days: 0 }));
    const before = lawn.history
      .filter((past) => past.productId !== treatment.productId && isMeant(from, [past.productName, ...past.activeIngredients.map(({ name }) => name)]))
      .map((past) => ({ name: past.productName, days: Math.abs(daysBetween(past.on, on)) }));
    const near = [...together, ...before].filter((other) => other.days < days);
    const [nearest, ...rest] = near;
    if (nearest === undefined) return [];
    const other = rest.reduce((least, one) => (one.days < least.days ? one : least), nearest);
    return [
      hold("nobody", {
        ...words(treatment),
        rule: other.days === 0 ? "not-on-one-day" : "too-near-another-product",
        what: `${productName} comes too near ${other.name} on ${lawn.name}.`,
        figure: `${other.days === 0 ? "Both go down on one day" : `${String(other.days)} days lie between them`}; the label keeps it apart from ${from} by ${String(days)} days.`,
        toDo: "Split the visit, or move it.",
        about: [productName, lawn.name],
      }),
    ];
  });
}
