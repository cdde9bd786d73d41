"use client";

import { type ReactNode } from "react";
import { PAST_MIDNIGHT_NOT_KNOWN, typedPastMidnight } from "#application/properties/watering-fields.schema";
import { namedClockWords } from "#domain/foundation/clock-words";
import { type WateringHoursOnFile } from "#domain/properties/watering-fact";
import { WEEKDAY_NAMES, WEEKDAYS } from "#domain/properties/weekday";
import { RadioRows, type RowChoice } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { FieldGroup } from "#ui/field";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { TextField } from "#ui/text-field";
import { useChoice, useField, useTyped } from "../../../../action-form.client";
import { TickRow } from "../tick-row.client";

const BY_DAYS: readonly RowChoice[] = [
  { value: "weekdays", word: "Days of the week", hint: "Those that are ticked below." },
  { value: "odd", word: "Odd dates", hint: "The 1st, 3rd, 5th and so on." },
  { value: "even", word: "Even dates", hint: "The 2nd, 4th, 6th and so on." },
];
const BY_HOUSE_NUMBER: RowChoice = { value: "house-number", word: "The house number", hint: "An odd number waters on odd dates, an even one on even dates." };

function pastMidnightChoices({ fromMinute, untilMinute }: WateringHoursOnFile): readonly RowChoice[] {
  const [from, until] = [namedClockWords(fromMinute), namedClockWords(untilMinute)];
  return [
    { value: "same-day", word: "Early and late hours of the same day", hint: `Each day of the rule has midnight to ${until}, and ${from} to midnight.` },
    { value: "next-morning", word: "Into the next morning", hint: `Each day of the rule has ${from} to midnight, and the day after it midnight to ${until}.` },
    { value: PAST_MIDNIGHT_NOT_KNOWN, word: "Not known yet", hint: "Until it is looked up only hours that are allowed either way count." },
  ];
}

interface FactWords {
  /** The name of the fields: townRule or controller. */
  readonly name: string;
  readonly none: string;
  readonly noneHint: string;
  readonly from: string;
  readonly until: string;
  readonly untilHint: string;
  /** What is asked below the hours. */
  readonly ofTheHours?: ReactNode;
  readonly by: string;
  readonly days: string;
  readonly choices: readonly RowChoice[];
}

function FactFields({ name, none, noneHint, from, until, untilHint, ofTheHours, by, days, choices }: FactWords) {
  return (
    <Stack gap={5}>
      <TickRow name={`${name}.isNone`} hint={noneHint}>
        {none}
      </TickRow>
      <Columns>
        <TextField label={from} optional type="time" hint="Empty: the hours are not on file." width="medium" {...useField(`${name}.from`)} />
        <TextField label={until} optional type="time" hint={untilHint} width="medium" {...useField(`${name}.until`)} />
      </Columns>
      {ofTheHours}
      <RadioRows label={by} {...useChoice(`${name}.by`)} choices={choices} />
      <FieldGroup id={`${name}-days`} label={days} optional hint="None ticked: the days are not on file. Where it is every day, tick all seven.">
        <Columns>
          {WEEKDAYS.map((weekday) => (
            <TickRow key={weekday} name={`${name}.on.${String(weekday)}`}>
              {WEEKDAY_NAMES[weekday]}
            </TickRow>
          ))}
        </Columns>
      </FieldGroup>
    </Stack>
  );
}

/** Asked where the town's hours pass midnight, and only there: they mean one thing in one town and the other in the next. */
function HoursPastMidnight() {
  const hours = typedPastMidnight(useTyped("townRule.from"), useTyped("townRule.until"));
  const choice = useChoice("townRule.pastMidnight");
  return hours !== undefined && <RadioRows label="These hours pass midnight" {...choice} choices={pastMidnightChoices(hours)} />;
}

/** When water may run: what the town's rule allows, which is law, and what the controller is set to, which can be changed. */
export function WateringFields() {
  return (
    <>
      <Section id="town-rule" name="The town’s watering rule">
        <FactFields
          name="townRule"
          none="The town has no watering rule"
          noneHint="Somebody looked it up. Unticked and with nothing below, the rule is not on file."
          from="Water may run from"
          until="Water may run until"
          untilHint="Earlier: past midnight. Midnight twice: all day."
          ofTheHours={<HoursPastMidnight />}
          by="The rule goes by"
          days="Days on which water may run"
          choices={[...BY_DAYS, BY_HOUSE_NUMBER]}
        />
      </Section>
      <Section id="controller" name="The controller">
        <FactFields
          name="controller"
          none="There is no controller"
          noneHint="Water is turned on by hand. Unticked and with nothing below, the controller’s hours are not on file."
          from="The controller runs from"
          until="The controller runs until"
          untilHint="Earlier: the next morning. Midnight twice: all day."
          by="The controller goes by"
          days="Days on which the controller runs"
          choices={BY_DAYS}
        />
      </Section>
    </>
  );
}
