import { type Metadata } from "next";
import { BOOM_EXAMPLE, boomWorksheet, GUN_EXAMPLE, gunWorksheet, SMALL_AREA_EXAMPLE, smallAreaWorksheet } from "#domain/worksheets/sprayer";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Sprayer calibration" };

const WANTED = { look: "line", label: "Wanted", hint: "2 gal per 1,000 sq ft, to see how far off it is", optional: true } as const;
const DENSITY = { look: "line", label: "Density of the spray", hint: "only where water was caught for a denser spray: 10.65 lb per gal", optional: true } as const;

const boom = sheetKind({
  key: "boom",
  name: "Boom",
  fields: {
    caught: { look: "lines", label: "Caught from each nozzle", hint: "one nozzle to a line: 20 fl oz", rows: 4 },
    caughtSeconds: { look: "line", label: "In how many seconds", hint: "30", width: "short" },
    nozzleSpacing: { look: "line", label: "Nozzles apart", hint: "20 in", width: "short" },
    course: { look: "line", label: "Length of the course", hint: "200 ft", width: "short" },
    courseSeconds: { look: "lines", label: "Seconds for the course", hint: "one run to a line: 45", rows: 2 },
    wanted: WANTED,
    density: DENSITY,
  },
  example: BOOM_EXAMPLE,
  work: boomWorksheet,
});

const smallArea = sheetKind({
  key: "small-area",
  name: "Small area, 1/128 acre",
  fields: {
    area: { look: "line", label: "Measured area", hint: "1/128 acre is 18 1/2 ft by 18 1/2 ft, 340 sq ft" },
    used: { look: "lines", label: "Sprayed on it", hint: "what it took, or what was caught in the time that it took; one run to a line: 25 fl oz", rows: 3 },
    wanted: WANTED,
    density: DENSITY,
  },
  example: SMALL_AREA_EXAMPLE,
  work: smallAreaWorksheet,
});

const gun = sheetKind({
  key: "gun",
  name: "Hose and gun",
  fields: {
    area: { look: "line", label: "Measured area", hint: "1,000 sq ft" },
    areaSeconds: { look: "lines", label: "Seconds to cover it", hint: "at your pace, three runs or more, one to a line: 50", rows: 3 },
    caught: { look: "lines", label: "Caught from the gun", hint: "one catch to a line: 1.4 gal", rows: 2 },
    caughtSeconds: { look: "line", label: "In how many seconds", hint: "50", width: "short" },
    wanted: WANTED,
    density: DENSITY,
  },
  example: GUN_EXAMPLE,
  work: gunWorksheet,
});

export default async function SprayerPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="sprayer" kinds={[boom, smallArea, gun]} asked={await searchParams} />;
}
