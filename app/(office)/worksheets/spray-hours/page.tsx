import { type Metadata } from "next";
import { SPRAY_HOURS_EXAMPLE, sprayHoursWorksheet, type WorkedSprayHours } from "#domain/worksheets/spray-hours";
import { HourStrip } from "#ui/drawings/hour-strip";
import { Sheet } from "#ui/sheet";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Spray hours" };

function DayDrawing({ spans, working }: WorkedSprayHours) {
  const first = spans[0]?.fromMinute ?? 0;
  const last = spans.at(-1)?.toMinute ?? 0;
  return (
    <Sheet>
      <HourStrip title="The day" conclusion={working.result} spans={hourSpans(spans)} startMinute={first} endMinute={last} />
    </Sheet>
  );
}

/** Hours of one standing and one reason are drawn as one stretch; where no hour was typed there is a gap, said so. */
function hourSpans(spans: WorkedSprayHours["spans"]) {
  const stretches: { fromMinute: number; toMinute: number; word: "open" | "closed" | "take-care"; reason?: string }[] = [];
  for (const { fromMinute, toMinute, verdict, reasons } of spans) {
    const last = stretches.at(-1);
    if (last !== undefined && last.toMinute < fromMinute) stretches.push({ fromMinute: last.toMinute, toMinute: fromMinute, word: "closed", reason: "No weather entered" });
    const before = stretches.at(-1);
    const reason = reasons[0]?.split(/[;:]|\.$/u)[0];
    if (before?.word === verdict && before.reason === reason) before.toMinute = toMinute;
    else stretches.push({ fromMinute, toMinute, word: verdict, ...(reason === undefined ? {} : { reason }) });
  }
  return stretches;
}

const sprayHours = sheetKind({
  key: "spray-hours",
  name: "Spray hours",
  fields: {
    hours: { look: "lines", label: "Hours", hint: "one to a line: hour, °F, humidity in percent, wind in mph, rain in inches, as in 7 am, 62, 88, 2, 0", rows: 12 },
    coolest: { look: "line", label: "Not below", hint: "°F by the label; empty for no limit", optional: true, width: "short" },
    hottest: { look: "line", label: "Not above", hint: "°F by the label: 85", optional: true, width: "short" },
    wind: { look: "line", label: "Most wind", hint: "mph, the label's or the company's, the stricter: 10", width: "short" },
    rainfast: { look: "line", label: "Dry hours after it", hint: "by the label, 0 for none: 4", width: "short" },
    sunrise: { look: "line", label: "Sunrise", hint: "6:20 am, to look for inversions", optional: true, width: "short" },
    sunset: { look: "line", label: "Sunset", hint: "8:10 pm", optional: true, width: "short" },
  },
  example: SPRAY_HOURS_EXAMPLE,
  work: sprayHoursWorksheet,
  draw: DayDrawing,
});

export default async function SprayHoursPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="spray-hours" kinds={[sprayHours]} asked={await searchParams} />;
}
