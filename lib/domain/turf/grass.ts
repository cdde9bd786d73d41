/** Cool-season grasses grow in spring and fall and suffer in heat; warm-season grasses grow in heat. */
export type GrassSeason = "cool" | "warm";

/** The lawn grasses, by the names that the published tables use. */
export const GRASSES = {
  "tall fescue": "cool",
  "Kentucky bluegrass": "cool",
  "perennial ryegrass": "cool",
  "fine fescue": "cool",
  "creeping bentgrass": "cool",
  bermudagrass: "warm",
  zoysiagrass: "warm",
  "St. Augustinegrass": "warm",
  centipedegrass: "warm",
  bahiagrass: "warm",
  buffalograss: "warm",
} as const satisfies Readonly<Record<string, GrassSeason>>;

/** A lawn grass, by its name. */
export type Grass = keyof typeof GRASSES;
/** The names of the grasses, cool-season ones first. */
export const GRASS_NAMES = Object.keys(GRASSES) as readonly Grass[] as readonly [Grass, ...Grass[]];

/** True for the name of a grass that is on file. */
export function isGrass(name: string): name is Grass {
  return Object.hasOwn(GRASSES, name);
}

/** The season of a mixture, by its grasses: a lawn with any cool-season grass is treated with a cool-season lawn's care. */
export function seasonOf(grasses: readonly Grass[]): GrassSeason {
  return grasses.some((grass) => GRASSES[grass] === "cool") ? "cool" : "warm";
}
