import Link from "next/link";
import { type ReactNode } from "react";
import styles from "./top-bar.module.css";

/** One of the places of the office. */
export interface Place {
  readonly name: string;
  readonly href: string;
}

export interface TopBarProps {
  readonly brand: string;
  readonly homeHref: string;
  readonly places: readonly Place[];
  /** The href of the place that the page belongs to. */
  readonly currentHref?: string;
  /** The page that lists the places; below 1,024 px it takes the place of the row. */
  readonly contentsHref: string;
  /** What stands at the right end: search, worksheets, settings, help, a word about the demonstration. */
  readonly ends?: ReactNode;
}

/** The bar at the top: the places as words on one line, or one link to them where the line is too narrow. */
export function TopBar({ brand, homeHref, places, currentHref, contentsHref, ends }: TopBarProps) {
  return (
    <header className={styles.bar}>
      <Link className={styles.brand} href={homeHref} prefetch={false}>
        {brand}
      </Link>
      <nav className={styles.places} aria-label="Places">
        <ul>
          {places.map((place) => (
            <li key={place.href}>
              <Link href={place.href} prefetch={false} aria-current={place.href === currentHref ? "page" : undefined}>
                {place.name}
              </Link>
            </li>
          ))}
        </ul>
      </nav>
      {ends !== undefined && <div className={styles.ends}>{ends}</div>}
      <Link className={styles.contents} href={contentsHref} prefetch={false}>
        Contents
      </Link>
    </header>
  );
}

export interface ContentsListProps {
  readonly places: readonly (Place & { readonly question: string })[];
}

/** The page behind "Contents": each place as a whole row to press, with the question that it answers. */
export function ContentsList({ places }: ContentsListProps) {
  return (
    <ul className={styles.list}>
      {places.map((place) => (
        <li key={place.href}>
          <Link href={place.href} prefetch={false}>
            <span className={styles.listName}>{place.name}</span>
            <span className={styles.listQuestion}>{place.question}</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
