import { type Finding, takeCare } from "#domain/foundation/finding";
import { isSameIngredient } from "#domain/mixing/season-limits";
import { type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/**
 * Where a pesticide brings what the last one on the same lawn brought too: one mode of action used in a row breeds
 * weeds, insects and diseases that it no longer controls (common practice). One ingredient is one mode of action
 * whatever its group is called. Other ingredients of one group are not compared, because a lawn's history does not hold
 * their groups.
 */
export function checkResistance({ treatments, lawns, on }: TicketQuestion): readonly Finding[] {
  return treatments.flatMap((treatment) =>
    lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).flatMap((lawn) => againOn(treatment, lawn, on)),
  );
}

function againOn({ label }: TicketTreatment, lawn: TicketLawn, on: TicketQuestion["on"]): readonly Finding[] {
  const { activeIngredients } = label;
  if (activeIngredients === "unknown") return [];
  const before = lawn.history.filter((past) => past.on < on && past.activeIngredients.length > 0);
  const latestOn = before.reduce((latest, past) => (past.on > latest ? past.on : latest), "");
  const last = before.filter((past) => past.on === latestOn).flatMap((past) => past.activeIngredients.map(({ name }) => name));
  const again = activeIngredients.filter(({ name, modeOfAction }) => modeOfAction !== "none" && last.some((other) => isSameIngredient(name, other)));
  return again.map(({ name, modeOfAction }) => {
    const group = modeOfAction === "none" || modeOfAction === "unknown" ? "" : ` (${modeOfAction.group})`;
    return takeCare({
      rule: "same-mode-of-action-again",
      source: "common-practice",
      what: `${name}${group} comes twice in a row on ${lawn.name}.`,
      figure: `The last pesticide there, on ${latestOn}, had it too.`,
      toDo: "Where you can, take a product of another group in between.",
      about: [label.productName, lawn.name],
    });
  });
}
