"use client";

import { calibrateSprayerSchema } from "#application/equipment/calibrate-sprayer.schema";
import { CAUGHT_LIQUIDS, type CaughtLiquidKind } from "#domain/equipment/caught-liquid";
import { type SprayerMethod } from "#domain/equipment/equipment-kind";
import { RadioRows } from "#ui/choice-rows";
import { type Choice } from "#ui/select-field";
import { TextField } from "#ui/text-field";
import { ActionForm, useChoice, useField } from "../../../../../action-form.client";
import { calibrateSprayerAction } from "./action";
import { MeasureLine, MeasureLines, TipSizeField, WhoAndWhen } from "./calibration-fields.client";

interface Props {
  readonly method: SprayerMethod;
  readonly fixed: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, string>>;
  readonly operators: readonly Choice[] | undefined;
}

export function CalibrateSprayerForm({ method, fixed, values, operators }: Props) {
  return (
    <ActionForm
      action={calibrateSprayerAction}
      schema={calibrateSprayerSchema}
      fixed={{ ...fixed, method }}
      values={values}
      submit="Write the calibration"
      whilePending="Writing"
    >
      <WhoAndWhen operators={operators} />
      <Setup />
      <Liquid />
      <Measured method={method} />
    </ActionForm>
  );
}

function Setup() {
  return (
    <>
      <TextField label="Tip" hint="As it is written on it, so that another tip shows." autoComplete="off" {...useField("tip")} />
      <TextField label="Pressure" hint="At the tip, in psi." inputMode="decimal" autoComplete="off" width="short" {...useField("pressurePsi")} />
    </>
  );
}

const LIQUID_WORDS: Readonly<Record<CaughtLiquidKind, string>> = {
  "as-water": "Water, or a mix as thin as water",
  "water-for-heavier": "Water, to stand for a heavier spray",
  "heavier-itself": "The heavier spray itself",
};

function Liquid() {
  return (
    <>
      <RadioRows label="Measured with" {...useChoice("liquid")} choices={CAUGHT_LIQUIDS.map((liquid) => ({ value: liquid, word: LIQUID_WORDS[liquid] }))} />
      <TextField
        label="Density of the heavier spray"
        optional
        hint="Of the mix as it is sprayed, with its unit: 10.65 lb per gal. A heavier spray comes slower than water."
        autoComplete="off"
        width="medium"
        {...useField("sprayDensity")}
      />
    </>
  );
}

const EACH_ON_ITS_LINE = "One to a line, with the unit: 64 fl oz, 1/2 gal.";

function Measured({ method }: { readonly method: SprayerMethod }) {
  switch (method) {
    case "timed-area":
      return (
        <>
          <MeasureLines name="caught" label="Caught" hint={EACH_ON_ITS_LINE} />
          <MeasureLine name="caughtSeconds" label="Each catch took, in seconds" hint="The same time for all." />
          <MeasureLine name="area" label="Measured area" hint="With its unit: 1,000 sq ft." />
          <MeasureLines name="areaSeconds" label="Seconds for the measured area" hint="At your usual pace, gun open. Three times or more, one to a line." />
        </>
      );
    case "timed-course":
      return (
        <>
          <MeasureLines name="caught" label="Caught" hint={EACH_ON_ITS_LINE} />
          <MeasureLine name="caughtSeconds" label="Each catch took, in seconds" hint="The same time for all." />
          <TipSizeField hint="Where the tip has a standard size, the catch is held against it: more than 10% over new is worn." chooseWords="No standard size, or not known" />
          <MeasureLine name="swath" label="Swath" hint="The width that one pass covers: 4 ft." />
          <CourseLines />
        </>
      );
    case "boom":
      return (
        <>
          <MeasureLines name="caught" label="Caught from each nozzle" hint="From left to right, one to a line, with the unit: 20 fl oz." />
          <MeasureLine name="caughtSeconds" label="Each catch took, in seconds" hint="The same time for all." />
          <TipSizeField hint="Where the tip has a standard size, the catch is held against it: more than 10% over new is worn." chooseWords="No standard size, or not known" />
          <MeasureLine name="nozzleSpacing" label="Spacing of the nozzles" hint="From one to the next: 20 in." />
          <CourseLines />
        </>
      );
    case "small-area":
      return (
        <>
          <MeasureLine name="area" label="Measured area" hint="With its unit: 1,000 sq ft." />
          <MeasureLines name="used" label="The area took" hint="What it took to fill the tank up again. Each run on its line, with the unit: 2 gal." />
        </>
      );
  }
}

function CourseLines() {
  return (
    <>
      <MeasureLine name="course" label="Length of the course" hint="With its unit: 100 ft." />
      <MeasureLines name="courseSeconds" label="Seconds for the course" hint="At your usual pace, tank half full. One to a line." />
    </>
  );
}
