import { accept, refuse } from "#domain/foundation/outcome";
import { parseRate } from "#domain/quantities/parse-rate";
import { type Grass, GRASS_NAMES } from "#domain/turf/grass";
import { type Authority } from "#domain/weather/spray-limits";
import { readAftercare } from "#domain/label/label-aftercare";
import { answerOf, gather, partsOf, type ReadAnswer, readOnFile, readWord, readYesOrNo } from "#domain/label/label-answer";
import { type CarrierRange, type KeptApart, type LabelUse, type MostApplications, type SeasonLimit, SERVICE_TYPES } from "#domain/label/label-facts";
import { readDropletLimits } from "#domain/label/droplet-class";
import { readDistanceToWater } from "#domain/label/label-distance";
import { KEPT_APART_WORDS, readKeptApartWords } from "#domain/label/kept-apart-words";
import { type LabelUseText } from "#domain/label/label-fields";
import { readRange, readRates } from "#domain/label/label-rates";
import { readTime } from "#domain/label/label-time";
import { readWeatherLimits } from "#domain/label/label-weather";

function readCarrier(value: string): ReadAnswer<CarrierRange> {
  return readRange(value, ["carrier-volume-per-area"]);
}

function readDaysBetween(value: string): ReadAnswer<{ readonly days: number }> {
  const time = readTime(value);
  if (!time.ok) return time;
  return time.value.unit === "days" && time.value.count > 0 ? accept({ days: time.value.count }) : refuse("Write whole days or weeks, as in 28 days.");
}

const SEASON_PERIODS: ReadonlyMap<string, SeasonLimit["period"]> = new Map([
  ["calendar year", "calendar-year"],
  ["12 months", "12-months"],
  ["season", "season"],
  ["growing season", "season"],
]);

/**
 * Reads how often it may go down: "2 per calendar year", "no more than 2 applications per 12 months", "1 per season".
 * Refused: no number above zero, or no such period.
 */
export function readMostApplications(value: string): ReadAnswer<MostApplications> {
  const [, digits = "", words = ""] = /^(?:(?:no more than|at most|up to) )?(\d{1,3})(?: applications?| times)? ?(?:per |in (?:a |any |one )?|a |each )(.+)$/iu.exec(value) ?? [];
  const period = /^year$/iu.test(words) ? "season" : SEASON_PERIODS.get(words.toLowerCase());
  const count = Number(digits);
  if (period === undefined || count === 0) return refuse(`"${value}" needs how often and the period: 2 per calendar year, 3 in 12 months, 2 per season.`);
  return accept({ count, period });
}

/**
 * Reads one limit a line: "Prodiamine; 1.5 lb per acre; calendar year". Refused: a line without its three parts, an
 * amount that is no rate over area, a period that is not known, and more parts, which would be dropped in silence.
 */
export function readSeasonLimits(value: string): ReadAnswer<{ readonly limits: readonly SeasonLimit[] }> {
  const limits: SeasonLimit[] = [];
  for (const line of value.split("\n")) {
    const [activeIngredient = "", amount = "", period = "", ...more] = line.split(";").map((part) => part.trim());
    const words = period.replace(/^(?:per|in|in a|a) /iu, "").toLowerCase();
    const periodOf = SEASON_PERIODS.get(words);
    if (activeIngredient === "" || periodOf === undefined) {
      return refuse(`"${line}" needs a name, how much and the period: Prodiamine; 1.5 lb per acre; calendar year, 12 months or season.`);
    }
    if (more.some((part) => part !== "")) {
      return refuse(`"${line}" has more than a name, how much and the period. A limit of another kind is a line of its own; what goes down at once is the highest rate of the use.`);
    }
    const most = parseRate(amount, { field: "limit", bases: ["active-ingredient-mass-per-area"] });
    if (!most.ok) return refuse(most.refusal.sentence);
    limits.push({ activeIngredient, most: most.value.rate, period: periodOf });
  }
  return accept({ limits });
}

/** Reads "not in bloom"; the label's own words may follow in quotation marks. */
function readBloom(value: string, labelWords: string): ReadAnswer<{ readonly labelWords: string }> {
  const word = readWord(["not in bloom", "yes"], value);
  return word.ok ? accept({ labelWords }) : refuse("Write not in bloom, or none where the label says nothing about flowers and bees.");
}

/**
 * Reads one thing a line that a product is kept apart from: "Iron; tank", "Lime; 14 days". Refused: a line without its
 * two parts, what is neither "tank" nor whole days above zero, and a kind of things that is no name and no class known here.
 */
export function readKeptApart(value: string): ReadAnswer<{ readonly from: readonly KeptApart[] }> {
  const from: KeptApart[] = [];
  for (const line of value.split("\n")) {
    const [what = "", apart = "", ...more] = line.split(";").map((part) => part.trim());
    const time = readTime(apart);
    const days = time.ok && time.value.unit === "days" ? time.value.count : 0;
    if (what === "" || more.length > 0 || (apart.toLowerCase() !== "tank" && days === 0)) {
      return refuse(`"${line}" needs what it is kept apart from, and tank or how many days: Iron; tank, or Lime; 14 days.`);
    }
    if (readKeptApartWords(what) === undefined) {
      return refuse(`"${what}" names no product or ingredient, and what belongs to it can't be told. Write a name on each line, or one of these: ${KEPT_APART_WORDS}.`);
    }
    from.push({ from: what, apart: apart.toLowerCase() === "tank" ? "tank" : { days } });
  }
  return accept({ from });
}

function readTargets(text: string): ReadAnswer<readonly string[]> {
  const answer = answerOf(text);
  if (answer.kind === "unread") return refuse("Write what it is put down against, or none for a feed.");
  return accept(answer.kind === "none" ? [] : partsOf(answer.value));
}

function readGrasses(text: string): ReadAnswer<LabelUse["grasses"]> {
  const answer = answerOf(text);
  if (answer.kind === "unread") return accept("unknown");
  if (answer.kind === "none") return refuse("Write any turfgrass where the label names no grass.");
  if (/^any turf ?grass(?:es)?$/iu.test(answer.value)) return accept("any turfgrass");
  const grasses: Grass[] = [];
  for (const part of partsOf(answer.value)) {
    const grass = readWord(GRASS_NAMES, part);
    if (!grass.ok) return refuse(`"${part}" is not known here. Write any turfgrass, or from: ${GRASS_NAMES.join(", ")}.`);
    grasses.push(grass.value);
  }
  return accept(grasses);
}

function readRequired(text: string, sentence: string): ReadAnswer<string> {
  const answer = answerOf(text);
  return answer.kind === "printed" ? accept(answer.value) : refuse(sentence);
}

/** Reads one use of a label, or, refused, gives every complaint by its field. */
export function readLabelUse(productName: string, use: LabelUseText) {
  const section = answerOf(use.section);
  const source = section.kind === "printed" ? `label of ${productName}, ${section.value}` : `label of ${productName}`;
  const authority: Authority = { basis: "label", source };
  const withAuthority = <Fact extends object>(read: (value: string, labelWords: string) => ReadAnswer<Fact>) => (value: string, labelWords: string) => {
    const fact = read(value, labelWords);
    return fact.ok ? accept({ ...fact.value, ...authority }) : fact;
  };
  const own = gather({
    useName: readRequired(use.useName, "Give this use a name."),
    serviceType: readWord(SERVICE_TYPES, use.serviceType.trim()),
    targets: readTargets(use.targets),
    grasses: readGrasses(use.grasses),
    rates: readRates(use.rates),
    carrier: readOnFile(use.carrier, withAuthority(readCarrier)),
    droplets: readOnFile(use.droplets, withAuthority(readDropletLimits)),
    leastDaysBetween: readOnFile(use.leastDaysBetween, withAuthority(readDaysBetween)),
    mostApplications: readOnFile(use.mostApplications, withAuthority(readMostApplications)),
    seasonLimits: readOnFile(use.seasonLimits, withAuthority(readSeasonLimits)),
    bloomAndBees: readOnFile(use.bloomAndBees, withAuthority(readBloom)),
    keptApart: readOnFile(use.keptApart, withAuthority(readKeptApart)),
    distanceToWater: readOnFile(use.distanceToWater, withAuthority(readDistanceToWater)),
    stainsHardSurfaces: readYesOrNo(use.stainsHardSurfaces),
  });
  const weather = readWeatherLimits(productName, use, authority);
  const aftercare = readAftercare(productName, use, authority);
  if (own.ok && weather.ok && aftercare.ok) {
    const { rates: stated, ...facts } = own.value;
    return accept<LabelUse>({ ...facts, ...stated, weather: { productName, ...weather.value }, aftercare: aftercare.value });
  }
  const complaints: Readonly<Record<string, string>> = { ...complaintsOf(own), ...complaintsOf(weather), ...complaintsOf(aftercare) };
  return refuse(complaints);
}

type Gathered = { readonly ok: true } | { readonly ok: false; readonly refusal: Readonly<Record<string, string>> };

function complaintsOf(read: Gathered): Readonly<Record<string, string>> {
  return read.ok ? {} : read.refusal;
}
