"use client";

import { completeVisitSchema, WIND_FROM } from "#application/register/complete-visit.schema";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { Disclosure } from "#ui/disclosure";
import { Section } from "#ui/section";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { DateField, TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../action-form.client";
import { completeVisitAction } from "./action";

/** One mix of the visit, as far as the form asks. */
export interface MixAsked {
  /** The line of its first product. */
  readonly key: string;
  readonly kind: "granular" | "spray";
  /** "Greenmere 32-0-0", "Ironside and Plainleaf". */
  readonly name: string;
  readonly planned: string;
  readonly isWorkedOut: boolean;
  /** Where no mix was worked out: what else goes on the same lawns, "Greenmere 32-0-0"; empty: nothing. */
  readonly mayBeOneWith: string;
  /** The fills of the truck's tanks with what is left in each. */
  readonly fills: readonly Choice[];
  /** So many fills may be named besides the first. */
  readonly furtherRows: number;
}

interface Asked {
  readonly lawns: readonly { readonly zoneId: string; readonly name: string }[];
  readonly mixes: readonly MixAsked[];
  readonly people: readonly Choice[];
}

const OUTCOMES = [
  { value: "done", word: "Done" },
  { value: "part", word: "Part" },
  { value: "not-done", word: "Not" },
] as const;

const YES_OR_NO = [
  { value: "yes", word: "Yes" },
  { value: "no", word: "No" },
] as const;

const AS_PLANNED = { value: "as-planned-not-measured", word: "As planned, not measured", hint: "The record says so in these words." } as const;

const MEASURED: Readonly<Record<MixAsked["kind"], readonly { readonly value: string; readonly word: string; readonly hint?: string }[]>> = {
  granular: [{ value: "bags", word: "In bags", hint: "Such as 1½ or 0.25." }, { value: "weight", word: "Weighed", hint: "Such as 12.5 lb." }, AS_PLANNED],
  spray: [{ value: "meter", word: "By the meter", hint: "Gallons of finished spray, such as 22.5." }, AS_PLANNED],
};

function When() {
  return (
    <Columns>
      <DateField label="Day" {...useField("doneOn")} />
      <TextField label="Started" type="time" width="short" {...useField("startedAt")} />
      <TextField label="Ended" type="time" width="short" {...useField("endedAt")} />
    </Columns>
  );
}

function Who({ people }: { readonly people: readonly Choice[] }) {
  return (
    <Columns split="two">
      <SelectField label="Applied by" chooseWords="Choose a person" choices={people} {...useField("applicatorId")} />
      <SelectField label="Supervised by" optional chooseWords="Nobody" choices={people} {...useField("supervisorId")} />
    </Columns>
  );
}

function Weather() {
  return (
    <Stack gap={4}>
      <p>Read at the site when it was applied. Left empty, the record says that it was not taken.</p>
      <Columns>
        <TextField label="Temperature, °F" optional inputMode="numeric" width="short" autoComplete="off" {...useField("temperatureF")} />
        <TextField label="Wind, mph" optional inputMode="numeric" width="short" autoComplete="off" {...useField("windMph")} />
        <SelectField label="Wind from" optional chooseWords="Not taken" choices={WIND_FROM.map((wind) => ({ value: wind, word: wind }))} width="short" {...useField("windFrom")} />
        <TextField label="Read from" optional hint="The instrument." autoComplete="off" {...useField("instrument")} />
      </Columns>
    </Stack>
  );
}

function Lawn({ zoneId, name }: Asked["lawns"][number]) {
  return <RadioRows label={name} layout="keys" choices={OUTCOMES} {...useChoice(`lawns.${zoneId}`)} />;
}

function Mix({ mix }: { readonly mix: MixAsked }) {
  const base = `mixes.${mix.key}`;
  return (
    <Section id={`mix-${mix.key}`} name={mix.name}>
      <Stack gap={4}>
        <p>Planned: {mix.planned}.</p>
        {mix.mayBeOneWith !== "" && (
          <p>Where it was in one fill with {mix.mayBeOneWith}, choose that fill here too. It was drawn from once: write the same gallons in both places, or leave these empty.</p>
        )}
        <RadioRows label="How was the amount come by?" choices={MEASURED[mix.kind]} {...useChoice(`${base}.measuredBy`)} />
        <TextField
          label={mix.kind === "spray" && mix.isWorkedOut ? "Gallons sprayed" : "Amount put down"}
          hint={mix.kind === "granular" || mix.isWorkedOut ? "Leave it empty where it was as planned." : "Gallons of spray where it came out of a fill; else the product itself, such as 8 fl oz."}
          optional
          autoComplete="off"
          width="medium"
          {...useField(`${base}.amount`)}
        />
        {mix.kind === "spray" && <Fill base={base} fills={mix.fills} />}
        {mix.furtherRows > 0 && <FurtherFills base={base} mix={mix} />}
      </Stack>
    </Section>
  );
}

function Fill({ base, fills }: { readonly base: string; readonly fills: readonly Choice[] }) {
  const hint = fills.length === 0 ? "No fill of this truck has anything left on record." : undefined;
  return <SelectField label="Drawn from" hint={hint} chooseWords="No fill: mixed for this visit alone" choices={fills} {...useField(`${base}.fillId`)} />;
}

const ORDINALS = ["second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"] as const;

/** A visit that took more than one fill: each of the others with its own gallons. Open where the visit has several. */
function FurtherFills({ base, mix: { fills, furtherRows } }: { readonly base: string; readonly mix: MixAsked }) {
  const { defaultValue = "" } = useField(`${base}.alsoFrom.0.fillId`);
  return (
    <Disclosure name="It came out of another fill as well" open={defaultValue !== ""}>
      <Stack gap={4}>
        <p>By the meter, give each fill its own gallons; the ones above are those of the first. As planned, one fill after the other counts as emptied.</p>
        {ORDINALS.slice(0, furtherRows).map((ordinal, row) => (
          <FurtherFill key={ordinal} base={`${base}.alsoFrom.${String(row)}`} ordinal={ordinal} fills={fills} />
        ))}
      </Stack>
    </Disclosure>
  );
}

function FurtherFill({ base, ordinal, fills }: { readonly base: string; readonly ordinal: string; readonly fills: readonly Choice[] }) {
  return (
    <Stack gap={4}>
      <SelectField label={`${ordinal.charAt(0).toUpperCase()}${ordinal.slice(1)} fill`} chooseWords={`No ${ordinal} fill`} optional choices={fills} {...useField(`${base}.fillId`)} />
      <TextField label={`Gallons of the ${ordinal} fill`} optional autoComplete="off" width="medium" {...useField(`${base}.amount`)} />
    </Stack>
  );
}

function Ends() {
  return (
    <Stack gap={4}>
      <Columns split="two">
        <RadioRows label="Is the sign up?" layout="keys" choices={YES_OR_NO} {...useChoice("signIsUp")} />
        <RadioRows label="Was the notice left?" layout="keys" choices={YES_OR_NO} {...useChoice("noticeWasLeft")} />
      </Columns>
      <TextField label="Remarks" optional autoComplete="off" {...useField("remarks")} />
      <TextField label="Signature" optional hint="The name of who applied it, as they sign." autoComplete="off" width="medium" {...useField("signature")} />
    </Stack>
  );
}

interface Props extends Asked {
  readonly fixed: Readonly<Record<"requestId" | "visitId", string>>;
  readonly values: Readonly<Record<string, string>>;
}

/** What really happened at a visit, read back before the record is written. */
export function CompleteVisitForm({ fixed, values, lawns, mixes, people }: Props) {
  return (
    <ActionForm
      action={completeVisitAction}
      schema={completeVisitSchema}
      fixed={fixed}
      values={values}
      submit="Read it back"
      whilePending="Putting the record together"
      write={{ submit: "Write the record", whilePending: "Writing" }}
    >
      <Section id="when" name="When">
        <When />
      </Section>
      <Section id="who" name="Who">
        <Who people={people} />
      </Section>
      <Section id="weather" name="Weather">
        <Weather />
      </Section>
      <Section id="lawns" name="Lawns">
        <Stack gap={4}>
          {lawns.map((lawn) => (
            <Lawn key={lawn.zoneId} {...lawn} />
          ))}
        </Stack>
      </Section>
      {mixes.map((mix) => (
        <Mix key={mix.key} mix={mix} />
      ))}
      <Section id="ends" name="Sign, notice, signature">
        <Ends />
      </Section>
    </ActionForm>
  );
}
