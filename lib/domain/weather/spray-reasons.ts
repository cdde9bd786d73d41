import { type HourStart } from "#domain/turf/hourly-series";
import { type LimitBasis } from "#domain/weather/spray-limits";

/**
 * The weather of one hour as a forecast or a station gives it. A fact that isn't given is left out and never
 * guessed: a rule that needs it closes the hour and says so.
 */
export interface WeatherHour extends HourStart {
  readonly temperatureF?: number | undefined;
  readonly relativeHumidityPercent?: number | undefined;
  readonly windMph?: number | undefined;
  readonly gustMph?: number | undefined;
  /** Where the wind comes from, in degrees of the compass. */
  readonly windFromDegrees?: number | undefined;
  readonly rainInches?: number | undefined;
  readonly rainChancePercent?: number | undefined;
  readonly sky?: "clear" | "cloudy" | undefined;
  readonly soil?: "workable" | "frozen" | "saturated" | undefined;
}

/** What an hour, or one reason in it, comes to. */
export type HourVerdict = "open" | "take-care" | "closed";

/** The rules that may speak of an hour. */
export type HourRule =
  | "no-weather"
  | "temperature-low"
  | "temperature-high"
  | "temperature-ahead"
  | "wind-low"
  | "wind-high"
  | "gusts"
  | "towards-sensitive"
  | "rain"
  | "rain-chance"
  | "heavy-rain"
  | "soil"
  | "inversion"
  | "delta-t";

/** What a reason rests on: a limit's authority, or the weather as such. */
export interface ReasonAuthority {
  readonly basis: LimitBasis | "weather";
  readonly source: string;
}

/** Why an hour is closed, or what to mind in it. A note changes no verdict. */
export interface HourReason extends ReasonAuthority {
  readonly verdict: "closed" | "take-care" | "note";
  readonly rule: HourRule;
  /** The product whose limit it is, or left out where it is not a product's. */
  readonly productName?: string;
  /** True where the rule could not be decided because a fact or a limit is missing. */
  readonly isUndecided: boolean;
  readonly sentence: string;
}

/** The worst of several reasons: closed before take-care before open. */
export function worstVerdict(reasons: readonly Pick<HourReason, "verdict">[]): HourVerdict {
  if (reasons.some(({ verdict }) => verdict === "closed")) return "closed";
  return reasons.some(({ verdict }) => verdict === "take-care") ? "take-care" : "open";
}

/** A reason that closes an hour because a limit is passed. */
export function closedBy(
  rule: HourRule,
  authority: ReasonAuthority,
  sentence: string,
  productName?: string,
): HourReason {
  return reason("closed", rule, authority, false, sentence, productName);
}

/** A reason that closes an hour because a rule can't be decided. */
export function undecidedBy(
  rule: HourRule,
  authority: ReasonAuthority,
  sentence: string,
  productName?: string,
): HourReason {
  return reason("closed", rule, authority, true, sentence, productName);
}

/** A reason to take care. */
export function careFor(
  rule: HourRule,
  authority: ReasonAuthority,
  sentence: string,
  productName?: string,
): HourReason {
  return reason("take-care", rule, authority, false, sentence, productName);
}

/** Something to know that decides nothing. */
export function noteOf(rule: HourRule, authority: ReasonAuthority, sentence: string): HourReason {
  return reason("note", rule, authority, false, sentence, undefined);
}

/** A limit that nobody has read closes the hour, whatever the weather. */
export function unreadLimit(rule: HourRule, productName: string, what: string): HourReason {
  const authority: ReasonAuthority = { basis: "label", source: `label of ${productName}` };
  return undecidedBy(
    rule,
    authority,
    `The ${what} of ${productName} has not been entered from its label.`,
    productName,
  );
}

/** A number as a crew member reads it: at most two decimals. */
export function shown(value: number): string {
  return withDecimals(value, LEAST_DECIMALS);
}

/**
 * A number and what it is held against, as {@link shown} writes them; where they differ and would read the same, with more
 * decimals until they differ: a sentence must not say that 90 °F are above 90 °F.
 */
export function shownApart(value: number, other: number): readonly [string, string] {
  for (let decimals = LEAST_DECIMALS; decimals <= MOST_DECIMALS; decimals += 1) {
    const pair = [withDecimals(value, decimals), withDecimals(other, decimals)] as const;
    if (value === other || pair[0] !== pair[1]) return pair;
  }
  return [String(value), String(other)];
}

/** Rain in inches as {@link shown} writes it; rain that fell never reads as none. */
export function shownRain(inches: number): string {
  return shownApart(inches, 0)[0];
}

const LEAST_DECIMALS = 2;
const MOST_DECIMALS = 9;

function withDecimals(value: number, decimals: number): string {
  return String(Math.round(value * 10 ** decimals) / 10 ** decimals);
}

function reason(
  verdict: HourReason["verdict"],
  rule: HourRule,
  { basis, source }: ReasonAuthority,
  isUndecided: boolean,
  sentence: string,
  productName: string | undefined,
): HourReason {
  return { verdict, rule, basis, source, isUndecided, sentence, ...(productName === undefined ? {} : { productName }) };
}
