import { type Metadata } from "next";
import { SPRAY_HOURS_EXAMPLE, sprayHoursWorksheet, type WorkedSprayHours } from "#domain/worksheets/spray-hours";
import { HourStrip } from "#ui/drawings/hour-strip";
import { Sheet } from "#ui/sheet";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Spray hours" };

const DAY_MINUTES = 1440;

/** The first day alone is drawn: the hours of the days after are there to decide its own, and stand in the table. */
function DayDrawing({ spans, working }: WorkedSprayHours) {
  const day = spans.filter(({ fromMinute }) => fromMinute < DAY_MINUTES);
  const first = day[0]?.fromMinute ?? 0;
  const last = day.at(-1)?.toMinute ?? 0;
  return (
    <Sheet>
      <HourStrip title={day.length < spans.length ? "The first day" : "The day"} conclusion={working.result} spans={hourSpans(day)} startMinute={first} endMinute={last} />
    </Sheet>
  );
}

/** Hours of one standing and one reason are drawn as one stretch; where no hour was typed there is a gap, said so. */
function hourSpans(spans: WorkedSprayHours["spans"]) {
  const stretches: { fromMinute: number; toMinute: number; word: "open" | "closed" | "take-care"; reason?: string }[] = [];
  for (const { fromMinute, toMinute, standing, reasons } of spans) {
    const last = stretches.at(-1);
    if (last !== undefined && last.toMinute < fromMinute) stretches.push({ fromMinute: last.toMinute, toMinute: fromMinute, word: "closed", reason: "No weather entered" });
    const before = stretches.at(-1);
    const [word, reason] = standing === "undecided" ? (["closed", "can't be decided, hours after are missing"] as const) : ([standing, reasons[0]?.split(/[;:]|\.$/u)[0]] as const);
    if (before?.word === word && before.reason === reason) before.toMinute = toMinute;
    else stretches.push({ fromMinute, toMinute, word, ...(reason === undefined ? {} : { reason }) });
  }
  return stretches;
}

const sprayHours = sheetKind({
  key: "spray-hours",
  name: "Spray hours",
  fields: {
    hours: { look: "lines", label: "Hours", hint: "one to a line and in order: hour, °F, humidity in percent, wind in mph, rain in inches, as in 7 am, 62, 88, 2, 0; past midnight they are the next day's", rows: 12 },
    coolest: { look: "line", label: "Not below", hint: "°F by the label; empty for no limit", optional: true, width: "short" },
    hottest: { look: "line", label: "Not above", hint: "°F by the label: 85", optional: true, width: "short" },
    hottestAfter: { look: "line", label: "Not above in the hours after it", hint: "°F by the label: 85", optional: true, width: "short" },
    hoursAfter: { look: "line", label: "For how many hours", hint: "by the label: 24", optional: true, width: "short" },
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
