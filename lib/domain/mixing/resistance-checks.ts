import { type CalendarDate, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { isSameIngredient } from "#domain/label/ingredient-name";
import { type ActiveIngredient, type LabelFacts } from "#domain/label/label-facts";
import { hasIngredients, type PastApplication, type PastIngredient, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { codeOfGroup, isOfOneKind, kindOf, type PesticideKind } from "#domain/label/resistance-group";

type ModeOfAction = ActiveIngredient["modeOfAction"];

/** An ingredient that was put down, on its day and of its kind. */
interface PutDownBefore extends Pick<PastIngredient, "name" | "modeOfAction"> {
  readonly on: CalendarDate;
  readonly kind: PesticideKind;
}

/**
 * Where a pesticide works in the same way as the last one of its kind on the same lawn: one mode of action used in a row
 * breeds weeds, insects and diseases that it no longer controls (common practice), and a herbicide in between does not
 * part two fungicides. Groups are compared as labels print them; one ingredient is one mode of action whatever its group
 * is called. Where the group of either is not on file, a note says that they could not be compared.
 */
export function checkResistance({ treatments, lawns, on }: TicketQuestion): readonly Finding[] {
  return treatments.flatMap((treatment) =>
    lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).flatMap((lawn) => againOn(treatment, lawn, on)),
  );
}

/** A product of which nobody has read what is in it stands for its ingredients. */
function ingredientsOf({ activeIngredients, productName }: PastApplication): readonly Pick<PastIngredient, "name" | "modeOfAction">[] {
  return activeIngredients === "unknown" ? [{ name: productName, modeOfAction: "unknown" }] : activeIngredients;
}

function pastOn(history: readonly PastApplication[], on: CalendarDate): readonly PutDownBefore[] {
  return history
    .filter((past) => hasIngredients(past) && past.on < on)
    .flatMap((past) => ingredientsOf(past).map(({ name, modeOfAction }) => ({ name, modeOfAction, on: past.on, kind: kindOf(modeOfAction, past.serviceType) })));
}

/**
 * What the last day with a pesticide of the kind brought of it, however much else lies between. One of no known kind may
 * be of any: its own last day counts too, where none that is surely of the kind came after it.
 */
function lastOfKind(kind: PesticideKind, past: readonly PutDownBefore[]): readonly PutDownBefore[] {
  const ofKind = past.filter((one) => isOfOneKind(kind, one.kind));
  const kinds = [...new Set(ofKind.map((one) => one.kind))];
  const last = kinds.flatMap((one) => onLastDay(ofKind.filter((other) => other.kind === one)));
  const surely = last.find((one) => kind !== "unknown" && one.kind === kind);
  return last.filter((one) => surely === undefined || one.on >= surely.on);
}

function onLastDay(past: readonly PutDownBefore[]): readonly PutDownBefore[] {
  const latestOn = past.reduce((latest, { on }) => (on > latest ? on : latest), "");
  return past.filter(({ on }) => on === latestOn);
}

function againOn({ label, use }: TicketTreatment, lawn: TicketLawn, on: CalendarDate): readonly Finding[] {
  const actives = label.activeIngredients === "unknown" ? [] : label.activeIngredients.filter(({ modeOfAction }) => modeOfAction !== "none");
  if (actives.length === 0) return [];
  const before = pastOn(lawn.history, on);
  return actives.flatMap((active) => {
    const kind = kindOf(active.modeOfAction, use.serviceType);
    const last = lastOfKind(kind, before);
    const same = last.find((past) => isSameIngredient(past.name, active.name)) ?? last.find((past) => isSameGroup(active.modeOfAction, past.modeOfAction));
    if (same !== undefined) return [twiceInARow(label, active, same, lawn, kind)];
    const untold = last.filter((past) => past.modeOfAction === "unknown" || (past.modeOfAction !== "none" && active.modeOfAction === "unknown"));
    return untold.map((past) => notCompared(label, active, past, lawn, kind));
  });
}

/** Of one kind as the last of it: what is compared here is of one kind, or of one that nobody knows. */
function isSameGroup(one: ModeOfAction, other: ModeOfAction): boolean {
  return typeof one === "object" && typeof other === "object" && codeOfGroup(one.group) === codeOfGroup(other.group);
}

function kindWords(kind: PesticideKind): string {
  return kind === "unknown" ? "pesticide" : kind;
}

function twiceInARow(label: LabelFacts, active: ActiveIngredient, past: PutDownBefore, lawn: TicketLawn, kind: PesticideKind): Finding {
  const { name, modeOfAction } = active;
  const group = typeof modeOfAction === "string" ? "" : ` (${modeOfAction.group})`;
  const isOther = !isSameIngredient(name, past.name);
  const last = kindWords(kind);
  return takeCare({
    rule: "same-mode-of-action-again",
    source: "common-practice",
    what: isOther ? `${name}${group} works in the same way as the last ${last} on ${lawn.name}.` : `${name}${group} comes twice in a row on ${lawn.name}.`,
    figure: isOther ? `The last ${last} there, on ${formatShortDate(past.on)}, had ${past.name} of the same group.` : `The last ${last} there, on ${formatShortDate(past.on)}, had it too.`,
    toDo: "Where you can, take a product of another group in between.",
    about: [label.productName, lawn.name],
  });
}

function notCompared(label: LabelFacts, active: ActiveIngredient, past: PutDownBefore, lawn: TicketLawn, kind: PesticideKind): Finding {
  const missing = [active, past].filter(({ modeOfAction }) => modeOfAction === "unknown").map(({ name }) => name);
  return note({
    rule: "mode-of-action-not-compared",
    source: "common-practice",
    what: `Whether ${active.name} works in the same way as the last ${kindWords(kind)} on ${lawn.name} is not known.`,
    figure: `The resistance group of ${missing.join(" and ")} is not on file.`,
    toDo: "Enter it as the label prints it.",
    about: [label.productName, lawn.name],
  });
}
