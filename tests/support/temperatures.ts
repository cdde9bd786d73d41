// Daily temperatures as a person would paste them.
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { addDays, type CalendarDate } from "#domain/foundation/calendar-date";
import { type TestCompany, valueOf } from "./crew";
import { type TestHouse } from "./house";

type TemperaturesForm = Parameters<typeof keepTemperatures>[2];

/** Lines of days in a row, each with the same high and low. */
export function pastedDays(from: CalendarDate, count: number, high = "65", low = "40"): string {
  return Array.from({ length: count }, (_none, index) => `${addDays(from, index)}, ${high}, ${low}`).join("\n");
}

/** The form that keeps temperatures, three days of March unless told otherwise. */
export function temperaturesForm(house: TestHouse, change: Partial<TemperaturesForm> = {}): TemperaturesForm {
  return {
    requestId: house.newId(),
    source: "Millbrook airfield",
    figuresFrom: "Its own monthly page, read by hand",
    scale: "fahrenheit",
    days: "2026-03-01, 65, 40\n2026-03-02, 60, 35\n2026-03-03, 70, 50",
    ...change,
  };
}

/** A source that nothing else is kept of, with three days. */
export async function aSource(house: TestHouse, company: TestCompany, source = `Yard ${house.newId()}`): Promise<string> {
  valueOf(await keepTemperatures(house, company.owner.key, temperaturesForm(house, { source })));
  return source;
}
