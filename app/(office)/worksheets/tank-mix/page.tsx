import { type Metadata } from "next";
import { MIX_KINDS, TANK_MIX_EXAMPLE, tankMixWorksheet } from "#domain/worksheets/tank-mix";
import { sheetKind, type WorksheetPageProps } from "../sheet";
import { WorksheetPage } from "../worksheet-page";

export const metadata: Metadata = { title: "Tank mix" };

const KINDS = MIX_KINDS.map((kind) => ({ value: kind, word: kind }));

function nameLook(group: string, hint: string) {
  return { look: "line", label: "Name", hint, optional: true, group } as const;
}

function rateLook(group: string) {
  return { look: "line", label: "Rate", hint: "1.5 fl oz per 1,000 sq ft, 32 fl oz per acre, 0.25% v/v", group } as const;
}

function kindLook(group: string) {
  return { look: "list", label: "Kind, for the mixing order", choices: KINDS, chooseWords: "Choose its kind", group } as const;
}

const [first, second, third, fourth] = ["First product", "Second product, if any", "Third product, if any", "Fourth product, if any"] as const;

const tankMix = sheetKind({
  key: "tank-mix",
  name: "Tank mix",
  fields: {
    tank: { look: "line", label: "The tank holds", hint: "100 gal", width: "short" },
    carrier: { look: "line", label: "The sprayer puts out", hint: "from its calibration: 2 gal per 1,000 sq ft, 20 gal per acre" },
    area: { look: "line", label: "Area to spray", hint: "25,000 sq ft, 1 1/2 acres" },
    name1: nameLook(first, "Herbicide"),
    rate1: rateLook(first),
    kind1: kindLook(first),
    name2: nameLook(second, "Surfactant"),
    rate2: rateLook(second),
    kind2: kindLook(second),
    name3: nameLook(third, "Iron"),
    rate3: rateLook(third),
    kind3: kindLook(third),
    name4: nameLook(fourth, "Marker dye"),
    rate4: rateLook(fourth),
    kind4: kindLook(fourth),
  },
  example: TANK_MIX_EXAMPLE,
  work: tankMixWorksheet,
});

export default async function TankMixPage({ searchParams }: WorksheetPageProps) {
  return <WorksheetPage worksheet="tank-mix" kinds={[tankMix]} asked={await searchParams} />;
}
