import { AmountField } from "#ui/amount-field";
import { CheckboxRows, ChoiceRow, RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { FormSample } from "#ui/gallery/form-sample.client";
import { NumberStepper } from "#ui/number-stepper.client";
import { PasswordField } from "#ui/password-field.client";
import { Section } from "#ui/section";
import { SelectField } from "#ui/select-field";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { TextAreaField } from "#ui/text-area-field";
import { DateField, TextField } from "#ui/text-field";

const ounces = [
  { value: "fl-oz", word: "fl oz", explained: "by volume" },
  { value: "oz-wt", word: "oz wt", explained: "by weight" },
] as const;

/** Every field, plain and with hint, error, and disabled; and a form by react-hook-form. */
export function FormPart() {
  return (
    <Section id="forms" name="Fields">
      <Columns split="two">
        <Sheet>
          <Stack gap={5}>
            <TextField name="street" label="Street" hint="House number first, as on the route sheet" defaultValue="412 Alder Ct" />
            <TextField
              name="zip"
              label="ZIP code"
              width="short"
              inputMode="numeric"
              defaultValue="4690"
              error="A ZIP code has five figures; this one has four."
            />
            <TextField name="unit" label="Apartment" optional width="short" />
            <TextField name="kept" label="Record number" disabled width="medium" defaultValue="set when it is written" />
            <DateField name="day" label="Day" defaultValue="2026-04-14" />
            <SelectField
              name="lawn"
              label="Lawn"
              chooseWords="Choose a lawn"
              choices={[
                { value: "a", word: "A, front" },
                { value: "b", word: "B, Nordwesthangbewässerungsstreifen hinter dem Gartenhaus" },
              ]}
            />
            <AmountField
              label="Amount used"
              number={{ name: "amount", defaultValue: "8" }}
              unit={{ name: "amount-unit" }}
              units={ounces}
            />
            <AmountField
              label="Water"
              number={{ name: "water", defaultValue: "3" }}
              unit={{ name: "water-unit" }}
              units={[{ value: "gal", word: "gal" }]}
            />
            <AmountField
              label="Left in the jug"
              number={{ name: "left", defaultValue: "8" }}
              unit={{ name: "left-unit" }}
              units={ounces}
              askWhichOunce
              error="“oz” can mean two things. Choose which."
            />
            <TextAreaField name="remark" label="Remark for the record" optional />
            <PasswordField name="password" label="Password" autoComplete="current-password" />
          </Stack>
        </Sheet>
        <Stack gap={5}>
          <Sheet>
            <Stack gap={5}>
              <RadioRows
                name="who"
                label="Who applied it?"
                choices={[
                  { value: "dana", word: "Dana Quill", hint: "license until December 31, 2026" },
                  { value: "ray", word: "Ray Tolland", hint: "technician, supervised by Dana Quill" },
                  { value: "lou", word: "Lou Marsh", hint: "license ended on March 31", disabled: true },
                ]}
                defaultValue="ray"
              />
              <CheckboxRows
                name="told"
                label="Who was told?"
                hint="All that apply"
                choices={[
                  { value: "customer", word: "The customer" },
                  { value: "neighbor", word: "The listed neighbor at 416 Alder Ct" },
                ]}
                defaultValues={["customer"]}
                error="The neighbor at 416 is listed and must be told by 4 pm."
              />
              <RadioRows
                name="from"
                label="Wind from"
                layout="keys"
                choices={["N", "NE", "E", "SE", "S", "SW", "W", "NW"].map((wind) => ({ value: wind, word: wind }))}
                defaultValue="SW"
              />
              <NumberStepper name="temperature" label="Temperature" unit="°F" min={20} max={120} defaultValue={72} />
              <ChoiceRow type="checkbox" id="planned" name="planned">
                As planned, not measured
              </ChoiceRow>
            </Stack>
          </Sheet>
          <Sheet>
            <FormSample />
          </Sheet>
        </Stack>
      </Columns>
    </Section>
  );
}
