import { type Metadata } from "next";
import { CANS_EXAMPLE, cansWorksheet, KNOWN_RATE_EXAMPLE, knownRateWorksheet } from "#domain/worksheets/irrigation";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Irrigation minutes" };

const DEPTH = { look: "line", label: "Depth of water", hint: "1/2 in", width: "short" } as const;
const LONGEST_RUN = { look: "line", label: "Longest run", hint: "minutes until water stands or runs off: 12", optional: true, width: "short" } as const;
const SOAK = { look: "line", label: "Rest between runs", hint: "minutes until it is gone: 30", optional: true, width: "short" } as const;

const knownRate = sheetKind({
  key: "known-rate",
  name: "The rate is known",
  fields: {
    depth: DEPTH,
    rate: { look: "line", label: "The station gives in an hour", hint: "1.28 in per hour; empty says how to test it", optional: true },
    longestRun: LONGEST_RUN,
    soak: SOAK,
  },
  example: KNOWN_RATE_EXAMPLE,
  work: knownRateWorksheet,
});

const cans = sheetKind({
  key: "cans",
  name: "From catch cans",
  fields: {
    depth: DEPTH,
    cans: { look: "lines", label: "Depth in each can", hint: "in inches, four cans or more: 0.2, 0.25, 0.2, 0.22", rows: 2 },
    minutes: { look: "line", label: "The station ran", hint: "minutes: 15", width: "short" },
    wind: { look: "line", label: "Wind during the test", hint: "mph: 3", optional: true, width: "short" },
    longestRun: LONGEST_RUN,
    soak: SOAK,
  },
  example: CANS_EXAMPLE,
  work: cansWorksheet,
});

export default async function IrrigationPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="irrigation" kinds={[knownRate, cans]} asked={await searchParams} />;
}
