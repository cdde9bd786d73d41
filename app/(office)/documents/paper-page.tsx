import { notFound } from "next/navigation";
import { cache, type ReactNode } from "react";
import { readPaperToPrint } from "#application/documents/read-paper-to-print";
import { PAPER_WORDS, type PaperKind } from "#domain/papers/issued-paper-data";
import { type UseCaseName } from "#application/permission";
import { Finding } from "#ui/finding";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Stack } from "#ui/stack";
import { PressForm } from "../../action-form.client";
import { type FormAction } from "../../form-state";
import { asMember } from "../../session";
import { pageFor } from "../page-for";
import { IssuesTable } from "./issues-table";

type KindWithPage = Exclude<PaperKind, "route-sheet" | "loading-list">;

const readOnce = cache((kind: KindWithPage, subjectId: string) => asMember(readPaperToPrint, { kind, subjectId }));

export interface PaperPageProps {
  readonly kind: KindWithPage;
  readonly useCase: UseCaseName;
  readonly subjectId: string;
  /** The name under which the use case takes the subject. */
  readonly field: string;
  readonly action: FormAction;
  /** What the paper is, in a sentence or two. */
  readonly sentence: string;
  readonly above?: ReactNode;
}

/** A paper's page: what will be printed, what is missing and why, the button, and what was printed before. */
export async function PaperPage({ kind, useCase, subjectId, field, action, sentence, above }: PaperPageProps) {
  const { company } = await pageFor(useCase);
  const answer = await readOnce(kind, subjectId);
  if (!answer.ok && answer.refusal.kind !== "not-allowed") notFound();
  if (!answer.ok) return <PageHead title={PAPER_WORDS[kind]} sentence={answer.refusal.sentence} />;
  const { about, why, warnings, issues } = answer.value;
  return (
    <>
      <PageHead above={above} title={about ?? PAPER_WORDS[kind]} sentence={sentence} />
      <Section id="print" name="Print it">
        <Stack gap={5}>
          {warnings.map((warning) => (
            <Finding key={warning} level="take-care" what={warning} source="house" />
          ))}
          {why !== null && <Finding level="hold" what={why} source="house" />}
          {why === null && (
            <PressForm kind="act" action={action} fixed={{ [field]: subjectId }} whilePending="Printing">
              Print
            </PressForm>
          )}
        </Stack>
      </Section>
      <IssuesTable issues={issues} timeZone={company.timeZone} empty="It was not printed yet. Each print is kept here as it was, with the time and the person." />
    </>
  );
}
