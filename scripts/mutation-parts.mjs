// What mutation testing changes, and the tests that have to notice: those of the same part of the core, and not whatever
// else happens to run through it. The part is named by MUTATED: MUTATED=ticket npm run mutation
const MIXING = "lib/domain/mixing";
const TESTS_OF_MIXING = ["tests/domain/mixing/**/*.test.ts", "tests/published/**/*.test.ts"];

/** @type {Readonly<Record<string, { readonly mutate: string[], readonly tests: string[] }>>} */
const PARTS = {
  quantities: { mutate: ["lib/domain/quantities/**/*.ts"], tests: ["tests/domain/quantities/**/*.test.ts"] },
  ticket: { mutate: [`${MIXING}/{mix-ticket,spray-mix,granular-mix,treated-area,rounding-room,delivered}.ts`], tests: TESTS_OF_MIXING },
  aftercare: {
    mutate: [`${MIXING}/{aftercare*,*-aftercare,watering-*,irrigation-run,station-schedule,span-set,clock-periods,applied-product,earlier-products,counted-from-work,crew-entry,unread-facts}.ts`],
    tests: TESTS_OF_MIXING,
  },
};

/** The part that is named, the quantities where none is. */
export function partMutated() {
  const name = process.env.MUTATED ?? "quantities";
  const part = PARTS[name];
  if (part === undefined) throw new Error(`There is no part ${name}; there are ${Object.keys(PARTS).join(", ")}.`);
  return part;
}
