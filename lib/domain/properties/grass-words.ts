import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type Grass, GRASS_NAMES } from "#domain/turf/grass";

/** The grasses of a lawn, the main one first, and whether anybody looked. */
export interface ListedGrasses {
  readonly grasses: readonly Grass[];
  readonly assumed: boolean;
}

/** What crews write for each grass, in small letters. */
const WORDS_OF: Readonly<Record<Grass, readonly string[]>> = {
  "tall fescue": ["tall fescue", "turf type tall fescue", "turf-type tall fescue", "ttf", "tttf", "tall"],
  "Kentucky bluegrass": ["kentucky bluegrass", "kentucky blue", "bluegrass", "blue grass", "kbg", "blue"],
  "perennial ryegrass": ["perennial ryegrass", "perennial rye", "ryegrass", "rye", "prg"],
  "fine fescue": ["fine fescue", "creeping red fescue", "hard fescue", "chewings fescue", "fine"],
  "creeping bentgrass": ["creeping bentgrass", "bentgrass", "bent"],
  bermudagrass: ["bermudagrass", "bermuda grass", "bermuda"],
  zoysiagrass: ["zoysiagrass", "zoysia grass", "zoysia"],
  "St. Augustinegrass": ["st. augustinegrass", "st augustinegrass", "st. augustine", "st augustine"],
  centipedegrass: ["centipedegrass", "centipede grass", "centipede"],
  bahiagrass: ["bahiagrass", "bahia grass", "bahia"],
  buffalograss: ["buffalograss", "buffalo grass", "buffalo"],
};

const GRASS_OF = new Map(GRASS_NAMES.flatMap((grass) => WORDS_OF[grass].map((word) => [word, grass] as const)));
const ALLOWED = GRASS_NAMES.join(", ");
const DOUBT = /\?|\b(assumed|probably|maybe|likely)\b/giu;
const BETWEEN = /\s*(?:[/+,;&]|\band\b|\bwith\b)\s*/iu;
const MIXTURE_WORD = /\b(mix|mixture|blend)\b/giu;

/**
 * Reads the grasses of a lawn: "tall fescue", "KBG / rye", "bluegrass (assumed)", "fescue?" is refused because fescue
 * alone could be tall or fine. A question mark or a word of doubt makes them assumed. Refused at `field`: nothing, an
 * unknown word, "mix" without the grasses in it.
 */
export function readGrasses(field: string, text: string): Outcome<ListedGrasses> {
  const found = text.trim();
  const assumed = found.match(DOUBT) !== null;
  const plain = found.replace(DOUBT, " ").replace(MIXTURE_WORD, " ").replace(/[()]/gu, " ").replace(/\s+/gu, " ").trim();
  if (plain === "") {
    return badInput(field, found === "" ? "nothing" : found, ALLOWED, "Say which grass grows there, and write “assumed” after it where nobody has looked.");
  }
  const grasses: Grass[] = [];
  for (const word of plain.split(BETWEEN).filter((part) => part !== "")) {
    const grass = GRASS_OF.get(word.toLowerCase());
    if (grass === undefined) {
      const sentence = word.toLowerCase() === "fescue"
        ? `"${found}" could be tall fescue or fine fescue. Write which.`
        : `"${word}" is no grass that is known here.`;
      return badInput(field, found, ALLOWED, sentence);
    }
    if (!grasses.includes(grass)) grasses.push(grass);
  }
  return accept({ grasses, assumed });
}
