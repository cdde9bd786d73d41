import { type CalendarDate } from "#domain/foundation/calendar-date";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { type ActiveIngredient, type LabelFacts } from "#domain/label/label-facts";
import { type PastApplication, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

type ModeOfAction = ActiveIngredient["modeOfAction"];
type PastIngredient = PastApplication["activeIngredients"][number];

/**
 * Where a pesticide works in the same way as the last one on the same lawn: one mode of action used in a row breeds
 * weeds, insects and diseases that it no longer controls (common practice). Groups are compared as labels print them;
 * one ingredient is one mode of action whatever its group is called. Where the group of either is not on file, a note
 * says that they could not be compared.
 */
export function checkResistance({ treatments, lawns, on }: TicketQuestion): readonly Finding[] {
  return treatments.flatMap((treatment) =>
    lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).flatMap((lawn) => againOn(treatment, lawn, on)),
  );
}

/** What the last day with a pesticide brought, however many feeds lie between. */
function lastBefore(history: readonly PastApplication[], on: CalendarDate): { readonly latestOn: string; readonly last: readonly PastIngredient[] } {
  const before = history.filter((past) => past.on < on && past.activeIngredients.length > 0);
  const latestOn = before.reduce((latest, past) => (past.on > latest ? past.on : latest), "");
  return { latestOn, last: before.filter((past) => past.on === latestOn).flatMap(({ activeIngredients }) => activeIngredients) };
}

function againOn({ label }: TicketTreatment, lawn: TicketLawn, on: CalendarDate): readonly Finding[] {
  const { activeIngredients } = label;
  if (activeIngredients === "unknown") return [];
  const { latestOn, last } = lastBefore(lawn.history, on);
  return activeIngredients
    .filter(({ modeOfAction }) => modeOfAction !== "none")
    .flatMap((active) => {
      const same = last.find((past) => isSameIngredient(past.name, active.name)) ?? last.find((past) => isSameGroup(active.modeOfAction, past.modeOfAction));
      if (same !== undefined) return [twiceInARow(label, active, same, lawn, latestOn)];
      const untold = last.filter((past) => past.modeOfAction === "unknown" || (past.modeOfAction !== "none" && active.modeOfAction === "unknown"));
      return untold.map((past) => notCompared(label, active, past, lawn));
    });
}

/**
 * "Group 3 herbicide" and "Group 3" are one group: a label that prints no kind is taken for the same kind. "Group 3
 * herbicide" and "Group 3 fungicide" are two, because each committee counts its own.
 */
function isSameGroup(one: ModeOfAction, other: ModeOfAction): boolean {
  if (typeof one === "string" || typeof other === "string") return false;
  const [left, right] = [codeAndKind(one.group), codeAndKind(other.group)];
  return left.code === right.code && (left.kind === "" || right.kind === "" || left.kind === right.kind);
}

function codeAndKind(group: string): { readonly code: string; readonly kind: string } {
  const words = group.toLowerCase().replace(/\bgroup\b/u, "").trim().split(/\s+/u);
  const isKind = (word: string) => /^(?:herbicide|fungicide|insecticide|miticide)s?$/u.test(word);
  const kind = words.find(isKind) ?? "";
  return { code: words.filter((word) => !isKind(word)).join(" "), kind: kind.replace(/s$/u, "") };
}

function twiceInARow(label: LabelFacts, active: ActiveIngredient, past: PastIngredient, lawn: TicketLawn, latestOn: string): Finding {
  const { name, modeOfAction } = active;
  const group = typeof modeOfAction === "string" ? "" : ` (${modeOfAction.group})`;
  const isOther = !isSameIngredient(name, past.name);
  return takeCare({
    rule: "same-mode-of-action-again",
    source: "common-practice",
    what: isOther ? `${name}${group} works in the same way as the last pesticide on ${lawn.name}.` : `${name}${group} comes twice in a row on ${lawn.name}.`,
    figure: isOther ? `The last pesticide there, on ${latestOn}, had ${past.name} of the same group.` : `The last pesticide there, on ${latestOn}, had it too.`,
    toDo: "Where you can, take a product of another group in between.",
    about: [label.productName, lawn.name],
  });
}

function notCompared(label: LabelFacts, active: ActiveIngredient, past: PastIngredient, lawn: TicketLawn): Finding {
  const missing = [active, past].filter(({ modeOfAction }) => modeOfAction === "unknown").map(({ name }) => name);
  return note({
    rule: "mode-of-action-not-compared",
    source: "common-practice",
    what: `Whether ${active.name} works in the same way as the last pesticide on ${lawn.name} is not known.`,
    figure: `The resistance group of ${missing.join(" and ")} is not on file.`,
    toDo: "Enter it as the label prints it.",
    about: [label.productName, lawn.name],
  });
}
