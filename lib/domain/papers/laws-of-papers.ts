// What a state's pack says of signs and notices, as the papers take it. A rule that is not on file stays a pointer to
// where it stands: nothing here makes words up.
import { capitalized } from "#domain/foundation/capitalized";
import { type UsState, US_STATES } from "#domain/company/us-state";
import { badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type RulePack, type SignRule, type StatutoryLength } from "#domain/rules/rule-pack";
import { type NoticeLaw, type NoticePart } from "#domain/papers/customer-notice";
import { type SignLaw, type SignPhrase } from "#domain/papers/posting-sign";

const INCHES_A_FOOT = 12;

/**
 * The law of a state's lawn marker. Refuses ("posting sign") where the pack has none, or asks for words that are no
 * whole phrase.
 */
export function signLawOf(state: UsState, pack: RulePack | undefined): Outcome<SignLaw> {
  const { name } = US_STATES[state];
  const fact = pack?.facts["posting-sign"];
  if (fact?.onFile !== true) {
    const where = fact === undefined ? "" : ` Look it up: ${fact.whereToLook}.`;
    return missingFact("posting sign", "the state's rule about posting signs", `What a lawn marker must say in ${name} is not on file.${where}`);
  }
  const rule = fact.value;
  const odd = rule.words.find((words) => /[{}]/u.test(words) && phraseOf(words).kind === "words");
  if (odd !== undefined) return badInput("posting sign", odd, "{name} or {phone} as a phrase of its own", `The rule for ${name} has words that no sign can be set from: “${odd}”.`);
  const short = inchesOf(rule.shortSide);
  const long = inchesOf(rule.longSide);
  return {
    ok: true,
    value: {
      jurisdiction: name,
      citation: fact.citation,
      sidesInches: rule.orientation === "landscape" ? [long, short] : [short, long],
      orientation: rule.orientation === "either" ? "any" : "as-given",
      sizeIs: rule.size,
      leastLetterHeightInches: inchesOf(rule.leastLetterHeight),
      colorWords: capitalized(rule.colors),
      phrases: rule.words.map(phraseOf),
    },
  };
}

function inchesOf({ value, unit }: StatutoryLength): number {
  return Number(value) * (unit === "ft" ? INCHES_A_FOOT : 1);
}

function phraseOf(words: string): SignPhrase {
  if (words === "{name}") return { kind: "company-name" };
  return words === "{phone}" ? { kind: "company-phone" } : { kind: "words", text: words };
}

/** The parts of a notice that each element of a statement asks for, by the words of the packs. */
const PARTS_OF_ELEMENT: Readonly<Record<string, readonly NoticePart[]>> = {
  "business name and telephone number": ["business-name", "business-phone"],
  "signature and license or registration number of the applicator": ["applicator-signature", "applicator-license"],
  "date and time of the application": ["date", "time"],
  "type of service with brand names": ["services-with-brand-names"],
  "precautions after the application, from the label": ["label-precautions"],
  "instruction to remove the marker no sooner than the next day": ["marker-removal"],
  "telephone number for more information": ["phone-for-more-information"],
};

/**
 * The law of a state's written notice. Where the pack has no statement, or one with an element that the paper has no
 * place for, the law is not on file and the paper is for the office only.
 */
export function noticeLawOf(state: UsState, pack: RulePack | undefined): NoticeLaw {
  const jurisdiction = US_STATES[state].name;
  const fact = pack?.facts["customer-statement"];
  if (fact?.onFile !== true) {
    const citation = fact?.whereToLook ?? "no rules of this state are on file";
    return { kind: "not-on-file", jurisdiction, citation, missing: "The law’s text about what a customer must be told is not on file." };
  }
  const unknown = fact.value.find((element) => PARTS_OF_ELEMENT[element] === undefined);
  if (unknown !== undefined) {
    return { kind: "not-on-file", jurisdiction, citation: fact.citation, missing: `The law asks for “${unknown}”, which this paper has no place for.` };
  }
  const required = fact.value.flatMap((element) => PARTS_OF_ELEMENT[element] ?? []);
  return { kind: "on-file", jurisdiction, citation: fact.citation, required, markerRemoval: removalOf(pack?.facts["posting-sign"]) };
}

/** The instruction about the marker in the sign rule's own words; empty where that rule is not on file. */
function removalOf(fact: RulePack["facts"]["posting-sign"] | undefined): string {
  if (fact?.onFile !== true) return "";
  const { downWords }: SignRule = fact.value;
  return `Please remove the lawn marker ${downWords}.`;
}
