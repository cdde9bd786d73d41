import { type Working } from "#domain/foundation/working";
import { listWords } from "#domain/foundation/list-words";
import { FORMULATIONS, type Formulation } from "#domain/label/label-facts";
import { type SprayTreatment, turnInTank } from "#domain/mixing/spray-mix";

/** Why a product is at its place, by the turn that its label's facts give it. */
function turnWords({ label }: SprayTreatment): string {
  switch (turnInTank(label)) {
    case 0:
      return "bags that dissolve go in first and must dissolve whole";
    case 1:
      return "a fertilizer that is no pesticide goes in before everything but bags";
    case 2:
      return FORMULATION_WORDS[label.formulation];
  }
}

const FORMULATION_WORDS: Readonly<Record<Formulation, string>> = {
  "water-soluble bag": "bags that dissolve go in first and must dissolve whole",
  "soluble powder": "powders that dissolve go in before those that only get wet",
  "wettable powder": "dry products that must get wet go in before liquids",
  "water-dispersible granule": "dry products that must fall apart go in before liquids",
  "suspension concentrate": "what floats in water goes in after dry products and before solutions",
  "suspo-emulsion": "half suspension and half oil, between the two",
  "soluble liquid": "solutions go in after what is wetted or floats",
  "emulsifiable concentrate": "oils go in after solutions, else they coat what is still dry",
  surfactant: "what makes foam goes in last",
  "dry granule": "granules are spread dry and go into no tank",
};

/** Formulations whose place no guide on file names. */
const FROM_MEMORY: readonly Formulation[] = ["soluble powder", "suspo-emulsion"];

/** Why the products go into the tank in the order that the ticket says, product by product. */
export function mixingOrderWorking(treatments: readonly SprayTreatment[]): Working {
  const guessed = FORMULATIONS.filter((formulation) => FROM_MEMORY.includes(formulation) && treatments.some(({ label }) => label.formulation === formulation));
  return {
    title: "The order in the tank",
    formula: "water-soluble bags, then fertilizers, then by formulation: what must be wetted, what floats, what dissolves, oils, surfactants; a label’s own order wins",
    inputs: treatments.map(({ label }) => ({ name: label.productName, figure: label.formulation, from: `the label of ${label.productName}` })),
    steps: treatments.map((treatment) => `${treatment.label.productName}: ${turnWords(treatment)}.`),
    result: treatments.length === 1 ? `${listWords(treatments.map(({ label }) => label.productName))} alone` : treatments.map(({ label }) => label.productName).join(", then "),
    source: `Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada, “General rules for mixing pesticide” (2013)${guessed.length === 0 ? "" : `; the place of ${listWords(guessed)} is from memory`}`,
  };
}
