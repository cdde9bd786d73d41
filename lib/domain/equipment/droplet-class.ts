import { type Finding, hold } from "#domain/foundation/finding";

/**
 * The droplet classes of ASABE S572, from the finest to the coarsest, as its letters and words. There are eight (read
 * second-hand); their order is from memory and agrees with a public summary of ISO 25358. They have no size in
 * micrometers: the standard compares with reference nozzles. Their colors are left out, because two editions of the
 * standard swap those of C and VC.
 */
export const dropletClasses = [
  { letters: "XF", words: "extremely fine" },
  { letters: "VF", words: "very fine" },
  { letters: "F", words: "fine" },
  { letters: "M", words: "medium" },
  { letters: "C", words: "coarse" },
  { letters: "VC", words: "very coarse" },
  { letters: "XC", words: "extremely coarse" },
  { letters: "UC", words: "ultra coarse" },
] as const;

export type DropletClass = (typeof dropletClasses)[number]["letters"];

/** Below zero when left is the finer, zero when they are one class, above zero when left is the coarser. */
export function compareDroplets(left: DropletClass, right: DropletClass): number {
  return placeOf(left) - placeOf(right);
}

function placeOf(dropletClass: DropletClass): number {
  return dropletClasses.findIndex(({ letters }) => letters === dropletClass);
}

/** The class in the standard's words: "very coarse". */
export function dropletsInWords(dropletClass: DropletClass): string {
  return dropletClasses[placeOf(dropletClass)]?.words ?? dropletClass;
}

/**
 * What a label wants: "medium or coarser" is a finest of M, "fine to medium" both ends. `none`: the label was read and
 * says nothing about droplets. `unknown`: nobody has read it for that.
 */
export type WantedDroplets =
  | { readonly finest?: DropletClass; readonly coarsest?: DropletClass; readonly citation?: string }
  | "none"
  | "unknown";

/** What a tip makes at the pressure in use, from its maker's chart; unknown when nobody has looked it up. */
export interface TipDroplets {
  readonly tip: string;
  readonly pressurePsi: number;
  readonly dropletClass: DropletClass | "unknown";
}

/**
 * Holds a tip's droplets against what a product's label wants. Finer or coarser than the label allows is a hold that
 * nobody answers; a label that was not read, or a tip that was not looked up, is a hold that the office answers by
 * entering the fact.
 */
export function judgeDroplets(tip: TipDroplets, product: string, wanted: WantedDroplets): readonly Finding[] {
  if (wanted === "none") return [];
  const about = [product, tip.tip];
  if (wanted === "unknown") {
    return [
      hold("office", {
        rule: "label-droplets-not-entered",
        source: "house",
        what: `What droplets the label of ${product} wants has not been entered.`,
        toDo: "Read the label and enter its droplet class, or that it has none.",
        about,
      }),
    ];
  }
  if (wanted.finest === undefined && wanted.coarsest === undefined) return [];
  if (tip.dropletClass === "unknown") {
    return [
      hold("office", {
        rule: "tip-droplets-not-entered",
        source: "house",
        what: `The droplet class of ${tip.tip} at ${tip.pressurePsi} psi has not been entered, and the label of ${product} wants one.`,
        figure: wantedInWords(wanted),
        toDo: "Look the tip up in its maker's chart at this pressure and enter the class.",
        about,
      }),
    ];
  }
  return outsideOf(tip, tip.dropletClass, product, wanted);
}

function outsideOf(
  tip: TipDroplets,
  found: DropletClass,
  product: string,
  wanted: Exclude<WantedDroplets, string>,
): readonly Finding[] {
  const isTooFine = wanted.finest !== undefined && compareDroplets(found, wanted.finest) < 0;
  const isTooCoarse = wanted.coarsest !== undefined && compareDroplets(found, wanted.coarsest) > 0;
  if (!isTooFine && !isTooCoarse) return [];
  return [
    hold("nobody", {
      rule: isTooFine ? "droplets-finer-than-label" : "droplets-coarser-than-label",
      source: "label",
      what: `${tip.tip} at ${tip.pressurePsi} psi makes ${isTooFine ? "finer" : "coarser"} droplets than the label of ${product} allows.`,
      figure: `It makes ${dropletsInWords(found)} (${found}). ${wantedInWords(wanted)}`,
      toDo: isTooFine ? "Take a coarser tip or a lower pressure." : "Take a finer tip or a higher pressure.",
      ...(wanted.citation === undefined ? {} : { citation: wanted.citation }),
      about: [product, tip.tip],
    }),
  ];
}

function wantedInWords({ finest, coarsest }: Exclude<WantedDroplets, string>): string {
  if (finest !== undefined && coarsest !== undefined) {
    if (finest === coarsest) return `The label wants ${dropletsInWords(finest)}.`;
    return `The label wants ${dropletsInWords(finest)} to ${dropletsInWords(coarsest)}.`;
  }
  if (finest !== undefined) return `The label wants ${dropletsInWords(finest)} or coarser.`;
  return coarsest === undefined ? "The label wants none." : `The label wants ${dropletsInWords(coarsest)} or finer.`;
}
