import { type DayShown } from "#application/days/read-day";
import { UndoBar } from "#ui/undo-bar";
import { closeAction, undoAction, type WayBack } from "./action";
import { durationWords } from "#domain/foundation/clock-words";

/** What the address says was just done. */
export type DoneParameters = Readonly<Partial<Record<"after" | "visit" | "day" | "position" | "version" | "order" | "adds", string>>>;

interface Told {
  readonly sentence: string;
  readonly way?: WayBack;
}

/** What was just done to the plan, with the way back. */
export function UndoLine({ day, done }: { readonly day: DayShown; readonly done: DoneParameters }) {
  const told = toldOf(day, done);
  if (told === undefined) return null;
  const undo = told.way === undefined ? {} : { undo: undoAction.bind(null, told.way) };
  return (
    <UndoBar {...undo} dismiss={closeAction.bind(null, day.date)}>
      {told.sentence}
    </UndoBar>
  );
}

function toldOf({ date, trucks }: DayShown, { after, visit = "", day = "", position = "", version = "", order = "", adds }: DoneParameters): Told | undefined {
  const street = trucks.flatMap(({ stops }) => stops).find((stop) => stop.visit.visitId === visit)?.visit.property.street ?? "The visit";
  const truck = `Truck ${String(trucks.find(({ routeDayId }) => routeDayId === day)?.number ?? "")}`;
  switch (after ?? "") {
    case "placed":
      return { sentence: `${street} goes last.${addsWords(adds)}`, way: { kind: "take-off", date, visitId: visit } };
    case "moved":
      return { sentence: `${street} is moved.${addsWords(adds)}`, way: { kind: "move", date, visitId: visit, routeDayId: day, position } };
    case "taken-off":
      return { sentence: "The visit is off the day and open again.", way: { kind: "restore", date, routeDayId: day, version, order } };
    case "ordered":
      return { sentence: `${truck} is in order.`, way: { kind: "restore", date, routeDayId: day, version, order } };
    case "undone":
      return { sentence: "It is as it was." };
    case "not-undone":
      return { sentence: "The day has changed since, so it is left as it now is." };
    default:
      return undefined;
  }
}

function addsWords(adds: string | undefined): string {
  const minutes = Number(adds);
  if (adds === undefined || !Number.isSafeInteger(minutes) || minutes === 0) return "";
  return minutes > 0 ? ` Adds ${durationWords(minutes)} to that truck's day.` : ` Saves ${durationWords(-minutes)} of that truck's day.`;
}
