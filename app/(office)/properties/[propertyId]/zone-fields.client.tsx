"use client";

import { GRASS_NAMES } from "#domain/turf/grass";
import { RadioRows } from "#ui/choice-rows";
import { Columns } from "#ui/columns";
import { SelectField } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { useChoice, useField } from "../../../action-form.client";

const GRASS_CHOICES = GRASS_NAMES.map((grass) => ({ value: grass, word: grass }));

/** What a lawn is called, what grows on it, whether there is water beside it, and whether somebody looked. */
export function ZoneFields() {
  return (
    <>
      <TextField label="Name of the lawn" hint="Such as Front, Back, Strip along the drive." autoComplete="off" width="medium" {...useField("name")} />
      <Columns>
        <SelectField label="Grass, most of it" chooseWords="Choose a grass" choices={GRASS_CHOICES} {...useField("grass")} />
        <SelectField label="Mixed with" optional chooseWords="Nothing else" choices={GRASS_CHOICES} {...useField("secondGrass")} />
        <SelectField label="And with" optional chooseWords="Nothing else" choices={GRASS_CHOICES} {...useField("thirdGrass")} />
      </Columns>
      <GrassesKnown />
      <WaterBeside />
    </>
  );
}

function WaterBeside() {
  return (
    <RadioRows
      label="Water beside it"
      hint="A pond, creek, ditch, drain or wetland that a strip may have to be kept clear of."
      {...useChoice("waterBeside")}
      choices={[
        { value: "none", word: "None: somebody looked" },
        { value: "yes", word: "There is water", hint: "Its length is entered with the lawn's water, or the water is drawn." },
        { value: "not-known", word: "Nobody has looked", hint: "Where a label or the law asks for a distance to water, the mix ticket holds until somebody has." },
      ]}
    />
  );
}

function GrassesKnown() {
  return (
    <RadioRows
      label="How the grass is known"
      {...useChoice("grassesKnown")}
      choices={[
        { value: "looked", word: "Somebody looked" },
        { value: "assumed", word: "Assumed", hint: "Checks then say so." },
      ]}
    />
  );
}
