import { readPressure, readTypedTable } from "#domain/equipment/typed-test";
import { type Finding, hold } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { isSameName } from "#domain/foundation/same-name";
import { compareDroplets, type DropletClass, type DropletLimits, dropletsInWords, limitsInWords, readDropletClass } from "#domain/label/droplet-class";
import { notReadOnLabel } from "#domain/label/not-read";
import { type OnFile } from "#domain/weather/spray-limits";

/** What a tip makes at the pressure in use, from its maker's chart; unknown when nobody has looked it up. */
export interface TipDroplets {
  readonly tip: string;
  readonly pressurePsi: number;
  readonly dropletClass: DropletClass | "unknown";
}

/** One place of a maker's chart that somebody looked up. */
export type ChartedTip = TipDroplets & { readonly dropletClass: DropletClass };

/**
 * Reads what somebody looked up in makers' charts, one to a line: tip; pressure; droplet class. Refused at `field`: a
 * line without its three parts, a pressure or a class that can't be read, one tip at one pressure twice, more than 100
 * lines.
 */
export function readTipDroplets(field: string, text: string): Outcome<readonly ChartedTip[]> {
  return readTypedTable<ChartedTip>(field, text, ({ line, parts, before }) => {
    if (parts === undefined) return badInput(field, line, "tip; pressure; class", `"${line}" needs the tip, the pressure and the class: Flat fan, red; 40 psi; medium.`);
    const [tip, pressure, letters] = parts;
    const pressurePsi = readPressure(field, pressure);
    if (!pressurePsi.ok) return pressurePsi;
    const dropletClass = readDropletClass(letters);
    if (!dropletClass.ok) return badInput(field, letters, "a class of ASABE S572", dropletClass.refusal);
    if (before.some((other) => isSameName(other.tip, tip) && other.pressurePsi === pressurePsi.value)) {
      return badInput(field, line, "each tip at a pressure once", `${tip} at ${String(pressurePsi.value)} psi is there twice. Keep the line that holds.`);
    }
    return accept({ tip, pressurePsi: pressurePsi.value, dropletClass: dropletClass.value });
  });
}

/**
 * The droplet class of a tip at a pressure by what was looked up: that of the nearest pressure of this very tip, if it
 * is near enough to be the same by the gauge (within so many psi). Between two pressures of a chart nothing is guessed.
 */
export function dropletsAt(charted: readonly ChartedTip[], tip: string, pressurePsi: number, samePressureWithinPsi: number): TipDroplets {
  const distance = (one: ChartedTip) => Math.abs(one.pressurePsi - pressurePsi);
  const [nearest] = charted
    .filter((one) => isSameName(one.tip, tip) && distance(one) <= samePressureWithinPsi)
    .toSorted((left, right) => distance(left) - distance(right));
  return { tip, pressurePsi, dropletClass: nearest?.dropletClass ?? "unknown" };
}

/**
 * Holds a tip's droplets against what a product's label wants. Finer or coarser than the label allows is a hold that
 * nobody answers; a label that was not read, or a tip that was not looked up, is a hold that the office answers by
 * entering the fact.
 */
export function judgeDroplets(tip: TipDroplets, product: string, wanted: OnFile<DropletLimits>): readonly Finding[] {
  if (wanted === "none") return [];
  if (wanted === "unknown") return [notReadOnLabel("label-droplets-not-entered", product, "what droplets it wants")];
  if (tip.dropletClass !== "unknown") return outsideOf(tip, tip.dropletClass, product, wanted);
  return [
    hold("office", {
      rule: "tip-droplets-not-entered",
      source: "house",
      what: `The droplet class of ${tip.tip} at ${String(tip.pressurePsi)} psi has not been entered, and the label of ${product} wants one.`,
      figure: `The label wants ${limitsInWords(wanted)}.`,
      toDo: "Look the tip up in its maker's chart at this pressure and enter the class at the gear.",
      about: [product, tip.tip],
    }),
  ];
}

function outsideOf(tip: TipDroplets, found: DropletClass, product: string, wanted: Exclude<OnFile<DropletLimits>, string>): readonly Finding[] {
  const isTooFine = wanted.finest !== undefined && compareDroplets(found, wanted.finest) < 0;
  const isTooCoarse = wanted.coarsest !== undefined && compareDroplets(found, wanted.coarsest) > 0;
  if (!isTooFine && !isTooCoarse) return [];
  return [
    hold("nobody", {
      rule: isTooFine ? "droplets-finer-than-label" : "droplets-coarser-than-label",
      source: "label",
      what: `${tip.tip} at ${String(tip.pressurePsi)} psi makes ${isTooFine ? "finer" : "coarser"} droplets than the label of ${product} allows.`,
      figure: `It makes ${dropletsInWords(found)} (${found}). The label wants ${limitsInWords(wanted)}.`,
      toDo: isTooFine ? "Take a coarser tip or a lower pressure." : "Take a finer tip or a higher pressure.",
      citation: wanted.source,
      about: [product, tip.tip],
    }),
  ];
}
