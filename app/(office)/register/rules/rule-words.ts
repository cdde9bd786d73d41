import { type RuleName, type RulePack, type SignRule, type Standing, type StatutoryLength } from "#domain/rules/rule-pack";

type ValueOf<Name extends RuleName> = Extract<RulePack["facts"][Name], { readonly onFile: true }>["value"];

function lengthWords({ value, unit }: StatutoryLength): string {
  return `${value} ${unit}`;
}

const UP_WORDS: Readonly<Record<SignRule["upTrigger"], string>> = {
  "before-application": "before the application",
  "at-start": "at its start",
  "at-time-of-application": "at the time of the application",
  "immediately-following": "right after the application",
  "on-day-of-application": "on the day of the application",
};

function signWords(sign: SignRule): readonly string[] {
  const size = `${lengthWords(sign.longSide)} by ${lengthWords(sign.shortSide)}`;
  const orientation = sign.orientation === "either" ? "" : `, ${sign.orientation}`;
  return [
    `${sign.size === "exactly" ? "Exactly" : "At least"} ${size}${orientation}, letters at least ${lengthWords(sign.leastLetterHeight)} high, ${sign.colors}.`,
    `The words: ${sign.words.join(" / ")}.`,
    `Stands ${sign.placement}${sign.support === null ? "" : `; the support is ${sign.support}`}.`,
    `Goes up ${UP_WORDS[sign.upTrigger]}.`,
    `May come down ${sign.downWords}; it is taken down by ${sign.removedBy}.`,
  ];
}

/** How each rule's value is said, in one or more lines. */
const VALUE_WORDS: { readonly [Name in RuleName]: (value: ValueOf<Name>) => readonly string[] } = {
  "what-counts-as-lawn-care-product": (value) => [value === "pesticides" ? "Pesticides." : "Pesticides and fertilizers."],
  "posting-sign": signWords,
  "customer-statement": (value) => value,
  "record-elements": (value) => value,
  "record-years": (value) => [value === 1 ? "1 year." : `${String(value)} years.`],
  phosphorus: ({ testWithinMonths, newLawnGrowingSeasons }) => [
    `Only where a soil test of the last ${String(testWithinMonths)} months shows too little.`,
    `A new lawn needs no test in its first ${String(newLawnGrowingSeasons)} growing seasons.`,
  ],
  "phosphate-per-application": ({ poundsPer1000SqFt }) => [`At most ${poundsPer1000SqFt} lb of P2O5 per 1,000 sq ft.`],
  "phosphate-per-year": ({ poundsPer1000SqFt }) => [`At most ${poundsPer1000SqFt} lb of P2O5 per 1,000 sq ft.`],
  "distance-to-water": ({ withDeflector, otherwise }) => [`${lengthWords(withDeflector)} with a deflector, ${lengthWords(otherwise)} otherwise.`],
  "frozen-or-saturated-ground": () => ["Nothing is put down on it."],
  "hard-surfaces": () => ["What falls there is cleaned up at once."],
  "nitrogen-per-application": ({ poundsPer1000SqFt }) => [`At most ${poundsPer1000SqFt} lb per 1,000 sq ft.`],
  "quick-nitrogen-per-application": ({ poundsPer1000SqFt }) => [`At most ${poundsPer1000SqFt} lb per 1,000 sq ft works at once.`],
  "slow-release-share": ({ leastPercentOfNitrogen }) => [`At least ${leastPercentOfNitrogen} % of the nitrogen is slow.`],
  "nitrogen-per-year": ({ poundsPer1000SqFt }) => [`At most ${poundsPer1000SqFt} lb per 1,000 sq ft.`],
  "blackout-dates": (value) => value.map(({ from, until }) => `From ${from} until ${until} (month and day).`),
  "supervision-of-technicians": (value) => [value],
  "license-category": (value) => [`${value.join(" or ")}.`],
};

/** What a rule on file says, in lines; one entry on file at a time, so its name and its value are of one rule. */
export function valueWords(name: RuleName, value: unknown): readonly string[] {
  return (VALUE_WORDS[name] as (value: unknown) => readonly string[])(value);
}

export const STANDING_WORDS: Readonly<Record<Standing | "unverified", string>> = {
  read: "read in its own words",
  "read-second-hand": "read second-hand",
  "read-old-edition": "read in an old edition",
  unverified: "nobody read it",
};
