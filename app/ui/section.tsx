import { type ReactNode } from "react";
import styles from "./section.module.css";

export interface SectionProps {
  /** The address within the page: jump links go to it. */
  readonly id: string;
  readonly name: string;
  /** A few words at the right end of the head: a count, a time, one link. */
  readonly aside?: ReactNode;
  readonly children: ReactNode;
}

/** A part of a page: its head over a rule, in the page's order of time. */
export function Section({ id, name, aside, children }: SectionProps) {
  const headId = `${id}-head`;
  return (
    <section className={styles.section} id={id} aria-labelledby={headId}>
      <div className={styles.head}>
        <h2 id={headId}>{name}</h2>
        {aside !== undefined && <div className={styles.aside}>{aside}</div>}
      </div>
      <div className={styles.body}>{children}</div>
    </section>
  );
}

export interface JumpLinksProps {
  readonly sections: readonly { readonly id: string; readonly name: string }[];
}

/** Links to the sections of this page, in their order. There are no tabs: everything is on the page. */
export function JumpLinks({ sections }: JumpLinksProps) {
  return (
    <nav className={styles.jumps} aria-label="On this page">
      <ul>
        {sections.map((section) => (
          <li key={section.id}>
            <a href={`#${section.id}`}>{section.name}</a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
