import { AftercareTimeline } from "#ui/drawings/aftercare-timeline";
import { HourStrip } from "#ui/drawings/hour-strip";
import { LawnPlan } from "#ui/drawings/lawn-plan";
import { NutrientBar } from "#ui/drawings/nutrient-bar";
import { NutrientMonths } from "#ui/drawings/nutrient-months";
import { Columns } from "#ui/columns";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import {
  crowdedYear,
  ordinaryAftercare,
  ordinaryGrowth,
  ordinaryHours,
  ordinaryMonths,
  ordinaryYear,
  restlessHours,
  shortAftercare,
} from "./sample-drawings";
import { ordinaryAreas, ordinaryLawns, smallLawns } from "./sample-plans";

/** Each drawing with ordinary data, with data that does not fit, and with none. */
export function DrawingPart() {
  return (
    <Section id="drawings" name="Drawings">
      <Stack gap={5}>
        <Columns split="plan">
          <Sheet>
            <LawnPlan title="412 Alder Ct" conclusion="7,532 sq ft of lawn; 6,543 are treated." lawns={ordinaryLawns} areas={ordinaryAreas} />
          </Sheet>
          <Stack gap={5}>
            <Sheet>
              <HourStrip
                title="Spraying hours, Tuesday"
                conclusion="Spray before 1 pm: 6 hours are open, then it is too hot for iron."
                spans={ordinaryHours}
                nowMinute={9 * 60 + 12}
              />
            </Sheet>
            <Sheet>
              <NutrientBar
                title="Nitrogen, lawn A, 2026"
                conclusion="1.6 of at most 4.0 lb N per 1,000 sq ft; 2.4 after this visit."
                unit="lb N per 1,000 sq ft"
                parts={ordinaryYear}
                range={{ name: "tall fescue", low: 2.5, high: 3.5 }}
                limit={{ amount: 4, source: "law" }}
                decimals={1}
              />
            </Sheet>
          </Stack>
        </Columns>
        <Sheet>
          <NutrientMonths
            title="Nitrogen by month, lawn A, 2026"
            conclusion="Half of it goes down while the grass grows best; nothing in the heat of July."
            unit="lb N per 1,000 sq ft"
            parts={ordinaryMonths}
            growth={ordinaryGrowth}
            decimals={1}
          />
        </Sheet>
        <Sheet>
          <AftercareTimeline
            title="What to do and when"
            conclusion="Keep off until dry, water Wednesday by 9 am, mow again on Thursday."
            now="Now: keep off the lawn."
            doneAt={{ weekday: 2, minute: 15 * 60 + 10 }}
            rows={ordinaryAftercare}
          />
        </Sheet>
        <Sheet>
          <HourStrip title="A restless day" conclusion="Spray from 6 am to 10 am." spans={restlessHours} nowMinute={5 * 60 + 20} />
        </Sheet>
        <Sheet>
          <NutrientBar
            title="Nitrogen, lawn B, 2026"
            conclusion="The plan goes 0.5 past the law’s 4.0: take one round off."
            unit="lb N per 1,000 sq ft"
            parts={crowdedYear}
            range={{ name: "Vielschnittrasen mit Kleinblättrigem Weißklee", low: 0.2, high: 0.6 }}
            limit={{ amount: 4, source: "law" }}
            decimals={1}
          />
        </Sheet>
        <Sheet>
          <AftercareTimeline
            title="A short one"
            conclusion="Everything is over tonight."
            doneAt={{ weekday: 6, minute: 8 * 60 + 40 }}
            rows={shortAftercare}
          />
        </Sheet>
        <Sheet>
          <LawnPlan title="Five slips" conclusion="11,200 sq ft in five slips." lawns={smallLawns} areas={[]} />
        </Sheet>
      </Stack>
    </Section>
  );
}
