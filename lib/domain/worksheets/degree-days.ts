import { addDays, type CalendarDate, formatShortDate, parseCalendarDate } from "#domain/foundation/calendar-date";
import { accept, type InputRefusal, missingFact, type Outcome, refuse } from "#domain/foundation/outcome";
import { type DegreeDayMethod, type DegreeDaySum, EIGHTY_SIX_FIFTY, type DailyExtremes, openingLine, sumDegreeDays } from "#domain/turf/degree-days";
import { type PastedDay, readPastedDays, refusePastedLine } from "#domain/worksheets/pasted-days";
import { type FieldAsk, ifTyped, readChoice, readModelNumber, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

const DEGREE_DAY_METHODS = ["simple", "reset", "86-50"] as const;
type MethodChoice = (typeof DEGREE_DAY_METHODS)[number];
/** The fields of the worksheet. */
export type DegreeDaysField = "days" | "start" | "method" | "base" | "threshold";

const MICHIGAN = "Nugent, Michigan State, Calculating Growing Degree Days, https://info.5y1.org/how-do-you-calculate-the-difference_1_baa5bb.html";
const IOWA = "Iowa State Agronomy 541, http://agron-www.agron.iastate.edu/courses/Agron541/classes/541/lesson02b/2b.1.1.html";
const MCMASTER = "McMaster and Wilhelm 1997, Agricultural and Forest Meteorology 87:291-300";

export const DEGREE_DAYS_EXAMPLE: WorksheetExample<DegreeDaysField> = {
  typed: { days: "2026-03-01, 65, 40\n2026-03-02, 60, 35\n2026-03-03, 70, 50", start: "", method: "simple", base: "50", threshold: "10" },
  from: `${MICHIGAN} (65 and 40 is 2.5; 60 and 35 is 0); ${IOWA} (70 and 50 is 10). The dates are made up`,
};

/** Days without dates follow one another from the first day; days with dates keep them. */
function datedDays(days: readonly PastedDay[], start: CalendarDate | undefined): Outcome<readonly DailyExtremes[]> {
  const dated: DailyExtremes[] = [];
  for (const [index, { date, ...extremes }] of days.entries()) {
    const day = date ?? (start === undefined ? undefined : addDays(start, index));
    if (day === undefined) return missingFact("start", "a date, such as 2026-03-01", "The lines have no dates: give the first day, such as 2026-03-01.");
    dated.push({ date: day, ...extremes });
  }
  return accept(dated);
}

function methodOf(choice: MethodChoice, base: number): DegreeDayMethod {
  switch (choice) {
    case "simple":
      return { kind: "simple-average", scale: "fahrenheit", baseDegrees: base };
    case "reset":
      return { kind: "reset", scale: "fahrenheit", baseDegrees: base };
    case "86-50":
      return EIGHTY_SIX_FIFTY;
  }
}

const FORMULAS: Readonly<Record<MethodChoice, string>> = {
  simple: "Degree days of a day = (high + low) ÷ 2 − base, and 0 where that is below 0.",
  reset: "A high or low below the base counts as the base. Degree days = (high + low) ÷ 2 − base.",
  "86-50": "A high or low below 50 counts as 50, and above 86 as 86. Degree days = (high + low) ÷ 2 − 50.",
};

const METHOD_WORDS: Readonly<Record<MethodChoice, string>> = { simple: "simple average", reset: "reset to the base", "86-50": "86/50" };

/** A sum of more days than a month has is read from the table's last column. */
const MOST_SUMMANDS = 31;

/** Enough digits that the rows of the table add up: temperatures have at most four, and halving them makes a fifth. */
const DECIMALS = 5;

function figure(value: number): string {
  const digits = Number(value.toFixed(DECIMALS));
  return digits.toLocaleString("en-US", { maximumFractionDigits: DECIMALS });
}

/** A sum of two readings as it is written, where one may be below zero. */
function sumWords(high: number, low: number): string {
  return low < 0 ? `${figure(high)} − ${figure(-low)} = ${figure(high + low)}` : `${figure(high)} + ${figure(low)} = ${figure(high + low)}`;
}

function readBase(typed: Typed<DegreeDaysField>): Outcome<number> {
  if (typed.method === "86-50") return accept(EIGHTY_SIX_FIFTY.baseDegrees);
  const ask: FieldAsk = { field: "base", what: "the base temperature", such: "50" };
  return readModelNumber(ask, typed.base, { lowest: "0", highest: "100", unit: "°F" });
}

/**
 * The running sum of degree days from daily highs and lows in °F, and the day on which a number of them is reached. The
 * first day counts. Refused by field: what is missing or can't be read, a day that is missing or stands twice, a low
 * above its high. A sum in °F is 1.8 times one in °C (by definition).
 */
export function degreeDaysWorksheet(typed: Typed<DegreeDaysField>): WorksheetOutcome {
  const read = readTogether({
    days: readPastedDays("days", typed.days, "fahrenheit"),
    start: ifTyped(typed.start, (text) => parseCalendarDate("start", text)),
    method: readChoice("method", typed.method, DEGREE_DAY_METHODS),
    base: readBase(typed),
    threshold: ifTyped(typed.threshold, (text) => readModelNumber({ field: "threshold", what: "the degree days to reach", such: "200" }, text, { lowest: "1", highest: "10000", unit: "" })),
  });
  if (!read.ok) return read;
  const { start, method, base, threshold } = read.value;
  const days = datedDays(read.value.days, start);
  if (!days.ok) return refuseOne(days.refusal);
  const [first, last] = [days.value[0], days.value.at(-1)];
  if (first === undefined || last === undefined) return refuseOne(refusePastedLine("days", "", "fahrenheit").refusal);
  const sum = sumDegreeDays(methodOf(method, base), { scale: "fahrenheit", days: days.value }, { from: start ?? first.date, through: last.date });
  if (!sum.ok) return refuse([atDays(sum.refusal)]);
  const reached = threshold === undefined ? undefined : openingLine(sum.value, threshold);
  const { totalDegreeDays, from, through, lines } = sum.value;
  const answers: WorksheetAnswer[] = [{ figure: figure(totalDegreeDays), unit: "degree days °F", of: `above ${base} °F from ${formatShortDate(from)} through ${formatShortDate(through)}` }];
  if (threshold !== undefined) answers.push({ figure: reached === undefined ? "not yet" : formatShortDate(reached.date), unit: "", of: reached === undefined ? `${figure(threshold)} are not reached; ${figure(threshold - totalDegreeDays)} are missing` : `${figure(threshold)} degree days are reached` });
  return accept({
    answers,
    working: {
      title: `Degree days above ${base} °F, ${METHOD_WORDS[method]}`,
      formula: FORMULAS[method],
      inputs: [
        { name: "Days", figure: `${lines.length}, the first one counts` },
        { name: "Base", figure: `${base} °F` },
        { name: "Method", figure: METHOD_WORDS[method] },
        ...(threshold === undefined ? [] : [{ name: "To reach", figure: `${figure(threshold)} degree days` }]),
      ],
      steps: stepsOf(sum.value, days.value),
      result: `${figure(totalDegreeDays)} degree days Fahrenheit (${figure(Math.round(totalDegreeDays / 0.18) / 10)} Celsius) above ${base} °F.`,
      source: method === "simple" ? MICHIGAN : MCMASTER,
    },
    findings: [],
    tables: [tableOf(sum.value, days.value)],
  });
}

/** The refusal names the day in its sentence; its field is the lines. */
function atDays(refusal: InputRefusal): InputRefusal {
  return { ...refusal, field: refusal.field === "through" ? "start" : "days" };
}

function dayOf(days: readonly DailyExtremes[], date: CalendarDate): DailyExtremes | undefined {
  return days.find((day) => day.date === date);
}

/** The first day with degree days, told; the rest stands in the table. */
function stepsOf({ method, lines, totalDegreeDays }: DegreeDaySum, days: readonly DailyExtremes[]): readonly string[] {
  const told = lines.find(({ degreeDays }) => degreeDays > 0) ?? lines[0];
  const day = told === undefined ? undefined : dayOf(days, told.date);
  if (told === undefined || day === undefined) return [];
  const cut = method.kind === "reset" ? (method.upperCutDegrees ?? Infinity) : Infinity;
  const counted = (degrees: number) => (method.kind === "reset" ? Math.min(Math.max(degrees, method.baseDegrees), cut) : degrees);
  const [high, low] = [counted(day.maximumDegrees), counted(day.minimumDegrees)];
  const counts = method.kind === "reset" ? `, counted as ${figure(high)} and ${figure(low)}` : "";
  const summands = lines.filter(({ degreeDays }) => degreeDays > 0).map(({ degreeDays }) => figure(degreeDays));
  return [
    `${formatShortDate(told.date)}: high ${figure(day.maximumDegrees)}, low ${figure(day.minimumDegrees)}${counts}.`,
    ...(told.degreeDays > 0
      ? [`High and low: ${sumWords(high, low)}.`, `Half of it less the base: ${figure(high + low)} ÷ 2 − ${figure(method.baseDegrees)} = ${figure(told.degreeDays)} degree days.`]
      : [`Half of high and low together is not above the base of ${figure(method.baseDegrees)}, which makes 0 degree days.`]),
    `The same for each day; every day stands in the table${summands.length > MOST_SUMMANDS ? ", with the sum up to it" : ""}.`,
    ...(summands.length < 2 || summands.length > MOST_SUMMANDS ? [] : [`Days above 0 added up: ${summands.join(" + ")} = ${figure(totalDegreeDays)} degree days.`]),
  ];
}

function tableOf({ lines }: DegreeDaySum, days: readonly DailyExtremes[]) {
  return {
    caption: "Day by day",
    columns: [{ head: "Day", align: "word" }, { head: "High", align: "figure" }, { head: "Low", align: "figure" }, { head: "Degree days", align: "figure" }, { head: "Sum", align: "figure" }],
    rows: lines.map(({ date, degreeDays, totalDegreeDays }) => {
      const day = dayOf(days, date);
      return [formatShortDate(date), `${String(day?.maximumDegrees)} °F`, `${String(day?.minimumDegrees)} °F`, figure(degreeDays), figure(totalDegreeDays)];
    }),
  } as const;
}
