import { z } from "zod";
import { SPRAYER_KINDS, SPREADER_KINDS } from "#domain/equipment/equipment-kind";
import { idField, requiredLine } from "#application/field.schema";
import { optionalAmount, optionalVolumeOrZero, typedAmount } from "#application/equipment/typed-field.schema";

const fieldsOfBoth = {
  name: requiredLine("what the crew calls it", 80),
  vehicleId: z.union([z.literal("").transform(() => null), idField], "Choose a truck, or none."),
  swath: optionalAmount("the width of one pass, such as 10 ft", "length"),
};

/** Spreaders have a deflector or have none; where nobody looked, the rules of law count it as missing. */
export const DEFLECTOR_ANSWERS = ["yes", "no", "nobody-looked"] as const;

/** What is asked of every sprayer. What pump and hose hold is typed, or follows from the hose and the pump. */
export const sprayerFields = {
  kind: z.enum(SPRAYER_KINDS, "Choose the kind of sprayer."),
  ...fieldsOfBoth,
  capacity: typedAmount("what the tank holds, such as 100 gal", "volume"),
  holdUp: optionalVolumeOrZero("what pump and hose hold, such as 3.5 gal"),
  hoseLength: optionalAmount("the length of the hose, such as 300 ft", "length"),
  hoseDiameter: optionalAmount("the inner diameter of the hose, such as 1/2 in", "length"),
  pumpHolds: optionalVolumeOrZero("what the pump holds, such as 0.4 gal"),
};

/** What is asked of every spreader. */
export const spreaderFields = {
  kind: z.enum(SPREADER_KINDS, "Choose the kind of spreader."),
  ...fieldsOfBoth,
  capacity: typedAmount("what the hopper holds, such as 50 lb", "mass"),
  deflector: z.enum(DEFLECTOR_ANSWERS, "Say whether it has a deflector, or that nobody looked."),
};
