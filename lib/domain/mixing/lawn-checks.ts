import { type CalendarDate, daysBetween } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { type ConstraintOf, statedConstraint } from "#domain/label/aftercare-constraint";
import { SURELY_MOWED_AFTER_DAYS } from "#domain/label/mowing-count";
import { youngestSod } from "#domain/properties/lawn-seeding";
import { type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * What is not sure of the lawns themselves, said once of each lawn on which something is put down: a grass that nobody
 * entered or that is only assumed, an area that came from another list. And a product that is planned twice on a lawn,
 * whose rates add up to more than one application; and new sod under a product whose label keeps it off new seed. New
 * seed itself is judged with the aftercare, by the label's own times.
 */
export function checkLawns({ lawns, treatments, on }: TicketQuestion): readonly Finding[] {
  return lawns.flatMap((lawn) => {
    const here = treatments.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId));
    return here.length === 0 ? [] : [...checkGrassEntry(lawn, here), ...checkArea(lawn), ...checkTwice(lawn, here), ...checkNewSod(lawn, here, on)];
  });
}

function checkGrassEntry({ name, grasses, grassesAssumed }: TicketLawn, here: readonly TicketTreatment[]): readonly Finding[] {
  if (grasses.length === 0 && here.some(({ use }) => use.grasses !== "any turfgrass")) {
    return [
      hold("office", {
        rule: "grass-not-on-file",
        source: "house",
        what: `The grass of ${name} is not on file.`,
        toDo: "Look what grows there and enter it; labels name the grasses on which a product may go.",
        about: [name],
      }),
    ];
  }
  if (!grassesAssumed || grasses.length === 0) return [];
  return [
    takeCare({
      rule: "grass-assumed",
      source: "house",
      what: `The grass of ${name} is only assumed: ${grasses.join(", ")}.`,
      toDo: "Look before you put anything down.",
      about: [name],
    }),
  ];
}

function checkArea({ name, areaOrigin }: TicketLawn): readonly Finding[] {
  if (areaOrigin !== "imported") return [];
  return [
    takeCare({
      rule: "area-assumed",
      source: "house",
      what: `The area of ${name} came from another list; nobody here has measured it.`,
      toDo: "Measure the lawn; every amount depends on it.",
      about: [name],
    }),
  ];
}

function checkTwice({ name }: TicketLawn, here: readonly TicketTreatment[]): readonly Finding[] {
  const again = here.filter(({ productId }, index) => here.findIndex((other) => other.productId === productId) < index);
  return [...new Set(again.map(({ label }) => label.productName))].map((productName) =>
    hold("office", {
      rule: "same-product-twice",
      source: "label",
      what: `${productName} is planned twice on ${name} in one visit.`,
      toDo: "Plan it once, at the rate that is meant.",
      about: [productName, name],
    }),
  );
}

/** The age in days from which on a label's words about new seed no longer matter. */
function daysNew(within: ConstraintOf<"seeding-before">["within"]): number {
  switch (within.anchor) {
    case "days":
    case "calendar-day":
      return within.days;
    case "application-start":
      return Math.ceil(within.durationMinutes / 1440);
    case "mowings":
      return SURELY_MOWED_AFTER_DAYS;
  }
}

/** A label's time after seeding says nothing of sod by itself; sod that is younger wants a look at the label. */
function checkNewSod({ name, seedings }: TicketLawn, here: readonly TicketTreatment[], on: CalendarDate): readonly Finding[] {
  const sod = youngestSod(seedings, on);
  if (sod === undefined) return [];
  const ageDays = daysBetween(sod.date, on);
  const when = ageDays === 0 ? " on the day of this work" : sod.standing === "done" ? ` ${daysWords(ageDays)} ago` : `, ${daysWords(ageDays)} before this work`;
  const what = sod.standing === "done" ? `The sod of ${name} was laid${when}.` : `Sod is planned for ${name}${when}.`;
  return here.flatMap((treatment) =>
    statedConstraint(treatment.use.aftercare, "seeding-before").flatMap(({ within, labelWords, source }) => {
      if (ageDays >= daysNew(within)) return [];
      return [
        takeCare({
          rule: "new-sod",
          source: "label",
          what,
          figure: `The label of ${treatment.label.productName} says of new seed: ${labelWords}`,
          toDo: "Read what the label says of sod, and pull at it: what is not rooted gets no treatment.",
          citation: source,
          about: [treatment.label.productName, name],
        }),
      ];
    }),
  );
}
