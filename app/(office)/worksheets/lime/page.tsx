import { type Metadata } from "next";
import { LIME_BY_LAB_EXAMPLE, LIME_BY_TABLE_EXAMPLE, limeByLabWorksheet, limeByTableWorksheet } from "#domain/worksheets/lime";
import { AREA, sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Lime" };

const EQUIVALENT = { look: "line", label: "Calcium carbonate equivalent", hint: "percent, from the bag: 90", width: "short" } as const;
const CAP = {
  look: "rows",
  label: "Most in one application",
  choices: [
    { value: "100", word: "100 lb per 1,000 sq ft (Penn State)" },
    { value: "50", word: "50 lb per 1,000 sq ft (an NC State agent)" },
  ],
} as const;

const byTable = sheetKind({
  key: "by-table",
  name: "Mehlich buffer, by the table",
  fields: {
    acidity: { look: "line", label: "Exchangeable acidity", hint: "meq per 100 g, from the lab's report: 7.8", width: "short" },
    targetPh: { look: "rows", label: "Wanted pH", choices: [{ value: "7.0", word: "7.0" }, { value: "6.5", word: "6.5" }, { value: "6.0", word: "6.0" }] },
    equivalent: EQUIVALENT,
    area: AREA,
    cap: CAP,
  },
  example: LIME_BY_TABLE_EXAMPLE,
  work: limeByTableWorksheet,
});

const byLab = sheetKind({
  key: "by-lab",
  name: "Another method, by the lab",
  fields: { recommended: { look: "line", label: "The lab recommends", hint: "as calcium carbonate: 100 lb per 1,000 sq ft" }, equivalent: EQUIVALENT, area: AREA, cap: CAP },
  example: LIME_BY_LAB_EXAMPLE,
  work: limeByLabWorksheet,
});

export default async function LimePage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="lime" kinds={[byTable, byLab]} asked={await searchParams} />;
}
