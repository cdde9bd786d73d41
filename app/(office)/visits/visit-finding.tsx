import Link from "next/link";
import { type ReactNode } from "react";
import { type Finding as DomainFinding, FINDING_SOURCE_WORDS } from "#domain/foundation/finding";
import { type AnswerOnFile } from "#application/visits/issued-ticket";
import { Finding } from "#ui/finding";
import { type CareOfForm } from "../../form-state";

/** Whose rule a finding is, with where it is written. */
export function sourceWords({ source, citation }: Pick<DomainFinding, "source" | "citation">): string {
  return citation === undefined ? FINDING_SOURCE_WORDS[source] : `${FINDING_SOURCE_WORDS[source]}: ${citation}`;
}

/** A finding as a form carries it beside what it reads back. */
export function careOfForm(finding: DomainFinding): CareOfForm {
  const { level, what, figure, toDo } = finding;
  return { level, what, ...(figure === undefined ? {} : { figure }), ...(toDo === undefined ? {} : { toDo }), source: sourceWords(finding) };
}

interface VisitFindingProps {
  readonly finding: DomainFinding;
  /** Where it is dealt with, with the words of the link. */
  readonly act?: { readonly href: string; readonly words: string } | undefined;
  readonly answer?: { readonly said: AnswerOnFile; readonly at: string } | undefined;
  /** A form below the words. */
  readonly children?: ReactNode;
}

/** One finding of a visit in its block: a hold that was answered shows who did and why. */
export function VisitFinding({ finding, act, answer, children }: VisitFindingProps) {
  const { level, what, figure, toDo } = finding;
  const words = { what, figure, toDo, source: sourceWords(finding) };
  if (answer !== undefined) {
    const { by, license, reason } = answer.said;
    return <Finding level="answered" {...words} answer={{ by, license, at: answer.at, reason }} />;
  }
  const actions =
    act === undefined && children === undefined ? undefined : (
      <>
        {act !== undefined && (
          <Link href={act.href} prefetch={false}>
            {act.words}
          </Link>
        )}
        {children}
      </>
    );
  return <Finding level={level} {...words} {...(actions === undefined ? {} : { actions })} />;
}
