/**
 * The demonstration's daily temperatures: a year of an invented airfield, plausible for the north of Indiana, with two days
 * missing and one that was entered again. Nothing of it was measured anywhere.
 */
import { randomUUID } from "node:crypto";
import { type SessionKey } from "#adapters/postgres/company-work";
import { keepTemperatures } from "#application/temperatures/keep-temperatures";
import { type House } from "#application/use-case";
import { must } from "./must";

export interface TemperaturesSeed {
  readonly key: SessionKey;
  readonly houseDaysAgo: (days: number) => House;
  readonly dayIn: (days: number) => string;
}

const SOURCE = "Tansy Hollow airfield (invented)";
const FIGURES_FROM = "Made up for the demonstration";
const DAYS = 365;
const MISSING = [103, 240];
const ENTERED_AGAIN = 12;

/** High and low in whole °F: a year's swing about 50 °F, warmest in late July, with a spell of days warmer or colder. */
function extremesOf(date: string, index: number): { readonly high: number; readonly low: number } {
  const dayOfYear = (Date.parse(`${date}T00:00:00Z`) - Date.parse(`${date.slice(0, 4)}-01-01T00:00:00Z`)) / 86_400_000;
  const season = 50 + 25 * Math.cos((2 * Math.PI * (dayOfYear - 202)) / 365);
  const mean = season + 5 * Math.sin(index / 2.3) + 3 * Math.sin(index / 0.7);
  const half = 9 + 2 * Math.sin(index / 1.9);
  return { high: Math.round(mean + half), low: Math.round(mean - half) };
}

/** Keeps a year of days through yesterday, and one of them a second time with another high. */
export async function makeTemperatures({ key, houseDaysAgo, dayIn }: TemperaturesSeed): Promise<void> {
  const form = { source: SOURCE, figuresFrom: FIGURES_FROM, scale: "fahrenheit" } as const;
  const lineOf = (daysAgo: number, warmer = 0) => {
    const date = dayIn(-daysAgo);
    const { high, low } = extremesOf(date, DAYS - daysAgo);
    return `${date}, ${String(high + warmer)}, ${String(low)}`;
  };
  const daysAgo = Array.from({ length: DAYS }, (_none, index) => DAYS - index).filter((each) => !MISSING.includes(each));
  must(await keepTemperatures(houseDaysAgo(0), key, { ...form, requestId: randomUUID(), days: daysAgo.map((each) => lineOf(each)).join("\n") }));
  must(await keepTemperatures(houseDaysAgo(0), key, { ...form, requestId: randomUUID(), days: lineOf(ENTERED_AGAIN, 2) }));
}
