"use client";

import { SEEDING_KIND_WORDS, SEEDING_STANDING_WORDS, SOWING_METHOD_WORDS } from "#domain/properties/lawn-seeding";
import { RadioRows } from "#ui/choice-rows";
import { DateField } from "#ui/text-field";
import { useChoice, useField } from "../../../action-form.client";

/** What seed or sod on a lawn is asked for. */
export function SeedingFields() {
  return (
    <>
      <RadioRows
        label="What it is"
        {...useChoice("kind")}
        choices={[
          { value: "overseeding", word: SEEDING_KIND_WORDS.overseeding, hint: "Labels count their waiting time from it. To the law on phosphorus the lawn stays as old as it is." },
          { value: "new-lawn", word: SEEDING_KIND_WORDS["new-lawn"], hint: "Labels count from it, and the law on phosphorus takes the lawn for a new one once this is done." },
          { value: "sod", word: SEEDING_KIND_WORDS.sod, hint: "To the law a new lawn once it is laid. Labels that speak of seed want a look." },
        ]}
      />
      <RadioRows
        label="How the seed goes in"
        {...useChoice("method")}
        choices={[
          { value: "broadcast", word: SOWING_METHOD_WORDS.broadcast },
          { value: "slit", word: SOWING_METHOD_WORDS.slit },
          { value: "unknown", word: SOWING_METHOD_WORDS.unknown, hint: "Also for sod. The longest of a label's waiting times then counts." },
        ]}
      />
      <DateField label="On" {...useField("date")} />
      <RadioRows
        label="Where it stands"
        {...useChoice("standing")}
        choices={[
          { value: "done", word: SEEDING_STANDING_WORDS.done },
          { value: "planned", word: SEEDING_STANDING_WORDS.planned, hint: "For today or a day ahead. Labels count with it too." },
        ]}
      />
    </>
  );
}
