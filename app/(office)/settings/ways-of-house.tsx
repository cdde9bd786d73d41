import { readHouseSettings } from "#application/companies/read-house-settings";
import { type HouseSettings } from "#domain/company/house-settings";
import { GRANULAR_PASSES_WORDS, LINE_AT_THE_END_WORDS, TANK_LOADS_WORDS } from "#domain/company/settings-in-words";
import { LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { asMember } from "../../session";
import { CHOSEN_SETTING_NAMES, TANK_MARK_NAME, WHOLE_SETTING_NAMES } from "./ways-words";

function pairsOf(settings: HouseSettings, tankMarkText: string) {
  const { calibrationValidDays, samePressureWithinPsi, heatCautionFromF, heatCautionWarmFromF, minutesPerStop, minutesPerThousandSquareFeet } = settings;
  return [
    { key: WHOLE_SETTING_NAMES.calibrationValidDays, value: `${String(calibrationValidDays)} days` },
    { key: WHOLE_SETTING_NAMES.samePressureWithinPsi, value: `${String(samePressureWithinPsi)} psi` },
    { key: CHOSEN_SETTING_NAMES.granularPasses, value: GRANULAR_PASSES_WORDS[settings.granularPasses] },
    { key: CHOSEN_SETTING_NAMES.tankLoads, value: TANK_LOADS_WORDS[settings.tankLoads] },
    { key: TANK_MARK_NAME, value: tankMarkText },
    { key: CHOSEN_SETTING_NAMES.lineAtTheEnd, value: LINE_AT_THE_END_WORDS[settings.lineAtTheEnd] },
    { key: WHOLE_SETTING_NAMES.heatCautionFromF, value: `${String(heatCautionFromF)} °F` },
    { key: WHOLE_SETTING_NAMES.heatCautionWarmFromF, value: `${String(heatCautionWarmFromF)} °F` },
    { key: WHOLE_SETTING_NAMES.minutesPerStop, value: String(minutesPerStop) },
    { key: WHOLE_SETTING_NAMES.minutesPerThousandSquareFeet, value: String(minutesPerThousandSquareFeet) },
  ];
}

/** What the house holds to where label and law leave it open. */
export async function WaysOfHouse({ mayChange }: { readonly mayChange: boolean }) {
  const answer = await asMember(readHouseSettings, {});
  if (!answer.ok) return null;
  const { settings, tankMarkText, version } = answer.value;
  return (
    <Section id="ways" name="How the house works">
      <Sheet>
        <Stack gap={5}>
          <p>
            What label and law leave open; a product’s own label always wins. {version === 1 && "Nobody has changed any of it yet: these are the defaults."}
          </p>
          <KeyValueList pairs={pairsOf(settings, tankMarkText)} />
          {mayChange && (
            <div>
              <LinkButton href="/settings/change-house-settings">Change how the house works</LinkButton>
            </div>
          )}
        </Stack>
      </Sheet>
    </Section>
  );
}
