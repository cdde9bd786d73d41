/** The turf diseases for which a published weather model is at hand. */
export type TurfDisease = "dollar-spot" | "brown-patch" | "pythium-blight" | "anthracnose";

/**
 * What has to be said beside every answer of a disease model: what it was made on, where it holds, and where
 * it is printed. No model here was made on home lawns, so an answer is a reason to go and look, never a
 * diagnosis and never by itself a reason to spray.
 */
export interface DiseaseModel {
  readonly disease: TurfDisease;
  readonly name: string;
  /** The grass and the kind of turf the model was developed and tested on. */
  readonly madeFor: string;
  /** Where it holds, and what its authors and others say of its limits. */
  readonly validity: string;
  readonly source: string;
  readonly address: string;
  /** Whether the source itself (or its abstract) was read, or a text that quotes it. */
  readonly reading: "read" | "read-second-hand";
}

/** One condition of a model made of conditions, with what was found, in the unit that its words name. */
export interface RiskCondition {
  readonly condition: string;
  readonly found: number;
  readonly isMet: boolean;
}

/** The answer of a model made of conditions: the weather favors the disease when all are met. */
export interface ConditionsAnswer {
  readonly model: DiseaseModel;
  readonly conditions: readonly RiskCondition[];
  readonly isFavorable: boolean;
}

/** Puts a model's conditions together. Of none the answer is not favorable. */
export function answerFromConditions(model: DiseaseModel, conditions: readonly RiskCondition[]): ConditionsAnswer {
  return { model, conditions, isFavorable: conditions.length > 0 && conditions.every(({ isMet }) => isMet) };
}

/** The answer of a model that gives one number, held against a threshold. */
export interface IndexAnswer {
  readonly model: DiseaseModel;
  readonly index: number;
  readonly threshold: number;
  readonly isFavorable: boolean;
}

/** One hour of weather over turf, beginning at an instant, as the hourly disease models read it. */
export interface TurfHour {
  readonly startsAtEpochMilliseconds: number;
  readonly airTemperatureC: number;
  readonly relativeHumidityPercent: number;
}
