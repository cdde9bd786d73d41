import { type Working, type WorkingInput } from "#domain/foundation/working";
import { measureInUnit } from "#domain/quantities/exact-quantity";
import { fromNumber, type Rational, toNumber } from "#domain/quantities/rational";
import { type TicketSettings } from "#domain/mixing/ticket-question";
import { placeOf } from "#domain/mixing/ticket-working-area";
import { figure, inUnit } from "#domain/mixing/ticket-working-words";
import { lanesAcross, type LawnPace, SECONDS_PER_TURN, timeInWords, timeOnLawns } from "#domain/mixing/time-on-lawn";
import { type TreatedLawn } from "#domain/mixing/treated-area";

type TimedLawn = Pick<TreatedLawn, "letter" | "name" | "treatedArea" | "spot">;

/** What the time on some lawns is worked out from. */
export interface TimeAsked {
  readonly lawns: readonly TimedLawn[];
  readonly gear: { readonly name: string; readonly pace: LawnPace };
  readonly passes: 1 | 2;
  readonly settings: Pick<TicketSettings, "minutesPerThousandSquareFeet">;
}

/** How long the work itself takes on the lawns of a mix. Looking for spots takes as long as it takes. */
export function timeWords({ lawns, gear: { pace }, passes, settings }: TimeAsked): string {
  if (lawns.some(({ spot }) => spot !== undefined)) return "Not worked out: the whole lawn is walked for its spots";
  return timeInWords(timeOnLawns(lawns.map(({ treatedArea }) => treatedArea), pace, passes, settings.minutesPerThousandSquareFeet));
}

/** How the time on the lawns comes about; none for spot work, and where nothing is treated. */
export function timeWorking(asked: TimeAsked): Working | undefined {
  const lawns = asked.lawns.filter(({ treatedArea }) => treatedArea.amount > 0n);
  if (lawns.length === 0 || lawns.some(({ spot }) => spot !== undefined)) return undefined;
  const { pace } = asked.gear;
  const whole = lawns.reduce((sum, { treatedArea }) => sum + toNumber(measureInUnit(treatedArea, "sq ft")), 0);
  const area = lawns.length > 1 ? [`${lawns.map(({ treatedArea }) => inUnit(treatedArea, "sq ft")).join(" + ")} = ${squareFeet(whole)}`] : [];
  const { formula, inputs, steps, source } = pace.kind === "swath-and-speed" ? byLanes({ ...asked, lawns }, pace) : byGround(asked, pace, whole);
  return {
    title: `Time on the lawn with ${asked.gear.name}`,
    formula,
    inputs: [...lawns.map((lawn) => ({ name: placeOf(lawn), figure: inUnit(lawn.treatedArea, "sq ft"), from: "treated area" })), ...inputs],
    steps: [...(pace.kind === "swath-and-speed" ? [] : area), ...steps],
    result: timeWords(asked),
    source,
  };
}

type Part = Pick<Working, "formula" | "inputs" | "steps" | "source">;

/** The digits after the point of a root or a time, more than any line prints. */
const EXACT_DECIMALS = 9;

function asFigure(value: number): string {
  return figure(exact(value));
}

function exact(value: number): Rational {
  return fromNumber(value, EXACT_DECIMALS);
}

function squareFeet(value: number): string {
  return `${asFigure(value)} sq ft`;
}

/** In whole minutes, as the words say it. */
function upToWhole(minutes: number): string {
  return `${asFigure(minutes)} min, up to whole minutes`;
}

/** Ground in a time: by the pace that was timed as a whole, or by the company's minutes, which have all passes in them. */
function byGround({ passes, settings: { minutesPerThousandSquareFeet: house } }: TimeAsked, pace: Exclude<LawnPace, { kind: "swath-and-speed" }>, whole: number): Part {
  if (pace.kind === "not-on-file") {
    return {
      formula: "minutes = treated area ÷ 1,000 sq ft × the company’s minutes, passes and turns included; no pace is on file",
      inputs: [{ name: "Minutes for 1,000 sq ft", figure: `${asFigure(house)} min`, from: "the company’s setting" }],
      steps: [`${squareFeet(whole)} ÷ 1,000 sq ft × ${asFigure(house)} min = ${upToWhole((whole * house) / 1000)}`],
      source: "common practice",
    };
  }
  const perMinute = toNumber(measureInUnit(pace.groundPerMinute, "sq ft"));
  const times = passes === 1 ? "" : `${String(passes)} × `;
  return {
    formula: "minutes = passes × treated area ÷ the ground that a minute covers, turns included",
    inputs: [passesInput(passes), { name: "In a minute", figure: inUnit(pace.groundPerMinute, "sq ft"), from: paceWords(pace) }],
    steps: [`${times}${squareFeet(whole)} ÷ ${inUnit(pace.groundPerMinute, "sq ft")} × 1 min = ${upToWhole((passes * whole) / perMinute)}`],
    source: "common practice",
  };
}

function passesInput(passes: 1 | 2): WorkingInput {
  return { name: "Passes", figure: String(passes) };
}

function paceWords({ basis }: Exclude<LawnPace, { kind: "not-on-file" }>): string {
  return basis === "nominal" ? "the nominal pace, which nobody has timed" : "the pace of the calibration";
}

/** Lane by lane, with a turn between two of them. */
function byLanes({ lawns, passes }: TimeAsked, pace: Extract<LawnPace, { kind: "swath-and-speed" }>): Part {
  const [swath, perMinute] = [inUnit(pace.swath, "ft"), inUnit(pace.distancePerMinute, "ft")];
  const feetPerMinute = toNumber(measureInUnit(pace.distancePerMinute, "ft"));
  const swathFeet = toNumber(measureInUnit(pace.swath, "ft"));
  const walked = lawns.map((lawn) => {
    const side = Math.sqrt(toNumber(measureInUnit(lawn.treatedArea, "sq ft")));
    const lanes = lanesAcross(side, swathFeet);
    return { lawn, side, lanes, feet: passes * lanes * side, turns: passes * (lanes - 1) };
  });
  const feet = walked.reduce((sum, one) => sum + one.feet, 0);
  const turns = walked.reduce((sum, one) => sum + one.turns, 0);
  const [straight, turning] = [feet / feetPerMinute, (turns * SECONDS_PER_TURN) / 60];
  const times = passes === 1 ? "" : `${String(passes)} × `;
  return {
    formula: "minutes = lanes × their length ÷ speed, and a turn between two lanes, in each pass; each lawn as if it were square",
    inputs: [
      passesInput(passes),
      { name: "Swath", figure: swath, from: paceWords(pace) },
      { name: "In a minute", figure: perMinute, from: paceWords(pace) },
      { name: "A turn", figure: `${String(SECONDS_PER_TURN)} s`, from: "common practice" },
    ],
    steps: [
      ...walked.flatMap(({ lawn, side, lanes, feet: own, turns: between }) => [
        `${placeOf(lawn)}: √ ${inUnit(lawn.treatedArea, "sq ft")} = ${asFigure(side)} ft, the length of a lane`,
        `${asFigure(side)} ft ÷ ${swath} = ${figure(exact(side / swathFeet))} lanes, so ${String(lanes)} in a pass`,
        `${times}${String(lanes)} × ${asFigure(side)} ft = ${asFigure(own)} ft to walk`,
        ...(between === 0 ? [] : [passes === 1 ? `${String(lanes)} − 1 = ${String(between)} turns` : `${String(passes)} × ${String(lanes)} − ${String(passes)} = ${String(between)} turns`]),
      ]),
      ...(walked.length > 1 ? [`${walked.map((one) => `${asFigure(one.feet)} ft`).join(" + ")} = ${asFigure(feet)} ft in all`] : []),
      ...(walked.length > 1 && turns > 0 ? [`${walked.map((one) => String(one.turns)).join(" + ")} = ${String(turns)} turns in all`] : []),
      `${asFigure(feet)} ft ÷ ${perMinute} × 1 min = ${turns === 0 ? upToWhole(straight) : `${asFigure(straight)} min`}`,
      ...(turns === 0 ? [] : [`${String(turns)} × ${String(SECONDS_PER_TURN)} s ÷ 60 s × 1 min = ${asFigure(turning)} min`, `${asFigure(straight)} min + ${asFigure(turning)} min = ${upToWhole(straight + turning)}`]),
    ],
    source: "common practice",
  };
}
