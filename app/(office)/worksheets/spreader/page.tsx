import { type Metadata } from "next";
import { PAN_LINE_EXAMPLE, panLineWorksheet, TEST_AREA_EXAMPLE, testAreaWorksheet } from "#domain/worksheets/spreader";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Spreader calibration" };

const testArea = sheetKind({
  key: "test-area",
  name: "Rate at a setting",
  fields: {
    area: { look: "line", label: "Test area", hint: "swath times course: 125 sq ft" },
    collected: { look: "lines", label: "Given in a run", hint: "collected, or weighed before and after; one run to a line: 5 oz wt", rows: 3 },
    wanted: { look: "line", label: "Wanted on the lawn", hint: "5 lb per 1,000 sq ft", optional: true },
    passes: { look: "rows", label: "The lawn is gone over", choices: [{ value: "one-pass", word: "once" }, { value: "two-passes-crosswise", word: "twice, crosswise, at half the rate" }] },
  },
  example: TEST_AREA_EXAMPLE,
  work: testAreaWorksheet,
});

const panLine = sheetKind({
  key: "pan-line",
  name: "Swath from a line of pans",
  fields: {
    spacing: { look: "line", label: "Pans apart", hint: "middle to middle: 1 ft", width: "short" },
    catches: { look: "lines", label: "What each pan caught", hint: "from left to right, the middle one under the spreader, in one unit: 0, 1, 3, 4, 3, 1, 0", rows: 3 },
    swath: { look: "line", label: "Swath to look at", hint: "12 ft; empty takes the effective swath", optional: true, width: "short" },
    pattern: { look: "rows", label: "Passes", choices: [{ value: "round-and-round", word: "round and round, right on left" }, { value: "back-and-forth", word: "back and forth, right on right" }] },
  },
  example: PAN_LINE_EXAMPLE,
  work: panLineWorksheet,
});

export default async function SpreaderPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="spreader" kinds={[testArea, panLine]} asked={await searchParams} />;
}
