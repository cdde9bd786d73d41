import { z } from "zod";
import { nozzleSizes } from "#domain/equipment/nozzle";
import { SPRAYER_KINDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";
import { idField, lineAsTyped, requiredLine } from "#application/field.schema";
import { optionalAmount, optionalAmountOrZero, optionalBagSettings, optionalMinutes, optionalPressure, optionalSpeed, optionalTipDroplets, typedAmount } from "#application/equipment/typed-field.schema";

const fieldsOfBoth = {
  name: requiredLine("what the crew calls it", 80),
  vehicleId: z.union([z.literal("").transform(() => null), idField], "Choose a truck, or none."),
  swath: optionalAmount("the width of one pass, such as 10 ft", "length"),
};

/** Spreaders have a deflector or have none; where nobody looked, the rules of law count it as missing. */
export const DEFLECTOR_ANSWERS = ["yes", "no", "nobody-looked"] as const;

/** What stands in for a sprayer's calibration; all of it may stay empty, and then nothing stands in. */
export const nominalSprayerFields = {
  tip: lineAsTyped("Give the tip, or leave it empty.", 80),
  tipSize: z.union([z.literal(""), z.enum(Object.keys(nozzleSizes))], "Choose the size of the tip, or leave it open."),
  tipFlow: optionalAmount("what the tip gives in a minute, such as 1.5 gal", "volume"),
  tipFlowPsi: optionalPressure("the pressure of that flow in psi"),
  pressurePsi: optionalPressure("the pressure in psi"),
  nozzleSpacing: optionalAmount("the spacing of the nozzles, such as 20 in", "length"),
  speedMph: optionalSpeed("the speed in mph"),
  minutesPerThousand: optionalMinutes("the minutes for 1,000 sq ft"),
};

/** What is asked of every sprayer. What pump and hose hold is typed, or follows from the hose and the pump. */
export const sprayerFields = {
  kind: z.enum(SPRAYER_KINDS, "Choose the kind of sprayer."),
  ...fieldsOfBoth,
  capacity: typedAmount("what the tank holds, such as 100 gal", "volume"),
  holdUp: optionalAmountOrZero("what pump and hose hold, such as 3.5 gal", "volume"),
  hoseLength: optionalAmount("the length of the hose, such as 300 ft", "length"),
  hoseDiameter: optionalAmount("the inner diameter of the hose, such as 1/2 in", "length"),
  pumpHolds: optionalAmountOrZero("what the pump holds, such as 0.4 gal", "volume"),
  ...nominalSprayerFields,
  tipDroplets: optionalTipDroplets("the droplet classes of its tips, one to a line"),
};

/** What is asked of every spreader. */
export const spreaderFields = {
  kind: z.enum(SPREADER_KINDS, "Choose the kind of spreader."),
  ...fieldsOfBoth,
  capacity: typedAmount("what the hopper holds, such as 50 lb", "mass"),
  deflector: z.enum(DEFLECTOR_ANSWERS, "Say whether it has a deflector, or that nobody looked."),
  bagSettings: optionalBagSettings("the settings by the bags, one to a line"),
};
