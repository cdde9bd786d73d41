/** What can be said of water at a property. */
export const TANK_WATER_ANSWERS = ["yes", "no"] as const;

/** Whether a tank can be filled at a property; unknown where nobody has said. */
export type TankWater = (typeof TANK_WATER_ANSWERS)[number] | "unknown";

export const TANK_WATER_WORDS: Readonly<Record<TankWater, string>> = { yes: "Can be filled here", no: "Can\u2019t be filled here", unknown: "Not on file" };

/** What is on file of it; what is neither of the answers, or nothing, is unknown. */
export function tankWaterOf(stored: string | null): TankWater {
  return TANK_WATER_ANSWERS.find((answer) => answer === stored) ?? "unknown";
}
