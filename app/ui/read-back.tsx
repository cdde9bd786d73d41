import Link from "next/link";
import { Fragment, type ReactNode } from "react";
import styles from "./read-back.module.css";

/** A fact within the sentence. With an address it is pressed to change it; missing, it says what is missing. */
export interface ReadBackFact {
  readonly fact: ReactNode;
  readonly href?: string;
  /** What is asked for, spoken with the link: "amount of Greenmere". */
  readonly of?: string;
  readonly missing?: boolean;
}

/** A piece of the sentence: words, or a fact. */
export type ReadBackPart = string | ReadBackFact;

export interface ReadBackProps {
  readonly parts: readonly ReadBackPart[];
}

/** What will be written, as one sentence, before it is written. Every fact in it is bold, underlined and pressable. */
export function ReadBack({ parts }: ReadBackProps) {
  return (
    <p className={styles.sentence}>
      {parts.map((part, index) => (
        <Fragment key={index}>{typeof part === "string" ? part : <Fact {...part} />}</Fragment>
      ))}
    </p>
  );
}

function Fact({ fact, href, of: subject, missing = false }: ReadBackFact) {
  const look = { className: styles.fact, "data-missing": missing || undefined };
  if (href === undefined) return <strong {...look}>{fact}</strong>;
  return (
    <Link {...look} href={href} prefetch={false} aria-label={spokenFact(fact, subject)}>
      {fact}
    </Link>
  );
}

function spokenFact(fact: ReactNode, subject: string | undefined): string | undefined {
  return subject !== undefined && typeof fact === "string" ? `${fact}: change the ${subject}` : undefined;
}
