import { type Metadata } from "next";
import { DEGREE_DAYS_EXAMPLE, degreeDaysWorksheet } from "#domain/worksheets/degree-days";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Degree days" };

const degreeDays = sheetKind({
  key: "degree-days",
  name: "Degree days",
  fields: {
    days: { look: "lines", label: "Daily highs and lows", hint: "one day to a line, typed or pasted, in °F: 2026-03-01, 65, 40; or high, low with the first day below", rows: 10 },
    start: { look: "line", label: "First day that counts", hint: "year-month-day: 2026-03-01; empty takes the first line", optional: true, width: "short" },
    method: {
      look: "rows",
      label: "Method",
      choices: [
        { value: "simple", word: "simple average, 0 where it is below the base" },
        { value: "reset", word: "reset: what is below the base counts as the base" },
        { value: "86-50", word: "86/50: reset to 50 °F and cut at 86 °F" },
      ],
    },
    base: { look: "line", label: "Base", hint: "°F: 50 for crabgrass, 32 for growth regulators; 86/50 always takes 50", width: "short" },
    threshold: { look: "line", label: "Degree days to reach", hint: "200", optional: true, width: "short" },
  },
  example: DEGREE_DAYS_EXAMPLE,
  work: degreeDaysWorksheet,
});

export default async function DegreeDaysPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="degree-days" kinds={[degreeDays]} asked={await searchParams} />;
}
