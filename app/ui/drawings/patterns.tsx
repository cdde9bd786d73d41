import styles from "./drawing.module.css";

/** The ids of the fills of one drawing. They must differ from those of every other drawing on the page. */
export interface PatternIds {
  readonly hatch: string;
  readonly dots: string;
  readonly stripes: string;
  readonly levels: string;
  readonly water: string;
}

/** Derives the ids of a drawing's fills from an id of its own. */
export function patternIds(drawingId: string): PatternIds {
  // React writes ids with characters that a url() reference can't hold in every browser.
  const base = drawingId.replace(/[^\w-]/g, "");
  return { hatch: `${base}-hatch`, dots: `${base}-dots`, stripes: `${base}-stripes`, levels: `${base}-levels`, water: `${base}-water` };
}

/** A reference to a fill, for the `fill` attribute. */
export function fillBy(id: string): string {
  return `url(#${id})`;
}

/**
 * The fills that stand for words. Hatch, 6 px at 45 degrees, means may not or closed, everywhere; dots mean take
 * care; upright stripes are slow release, level ones a release that no label states; short dashes are kept clear of water.
 */
export function Patterns({ ids }: { readonly ids: PatternIds }) {
  return (
    <defs>
      <pattern id={ids.hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className={styles.patternLine} d="M3 0v6" />
      </pattern>
      <pattern id={ids.dots} width="7" height="7" patternUnits="userSpaceOnUse">
        <circle className={styles.patternDot} cx="2" cy="2" r="1.1" />
        <circle className={styles.patternDot} cx="5.5" cy="5.5" r="1.1" />
      </pattern>
      <pattern id={ids.stripes} width="4" height="4" patternUnits="userSpaceOnUse">
        <path className={styles.patternStripe} d="M1 0v4" />
      </pattern>
      <pattern id={ids.levels} width="4" height="6" patternUnits="userSpaceOnUse">
        <path className={styles.patternStripe} d="M0 3h4" />
      </pattern>
      <pattern id={ids.water} width="12" height="10" patternUnits="userSpaceOnUse">
        <path className={styles.patternWater} d="M1 2.5h6M7 7.5h5M0 7.5h1" />
      </pattern>
    </defs>
  );
}
