import Link from "next/link";
import { type InputRefusal } from "#domain/foundation/outcome";
import { Button, LinkButton } from "#ui/button";
import { ErrorSummary } from "#ui/error-summary.client";
import { PageHead } from "#ui/page-head";
import { Row } from "#ui/row";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { memberOfPage } from "../../session";
import { WORKSHEETS, type WorksheetName, worksheetPath } from "./catalog";
import { type Asked, askedText, type SheetKind } from "./sheet";
import { SheetFields } from "./sheet-fields";
import { SheetResult } from "./sheet-result";
import styles from "./worksheet.module.css";

interface Props {
  readonly worksheet: WorksheetName;
  readonly kinds: readonly [SheetKind, ...SheetKind[]];
  readonly asked: Asked;
}

/** What the address names after a sheet was sent: what comes of it, and else the complaints about it. */
const RESULT = "result";

/** A worksheet: its fields at the left, what comes of them at the right, one below the other on a phone. */
export async function WorksheetPage({ worksheet, kinds, asked }: Props) {
  const { company } = await memberOfPage();
  const { name, question } = WORKSHEETS[worksheet];
  const kind = kinds.find(({ key }) => key === askedText(asked, "kind")) ?? kinds[0];
  const answer = kind.answer(asked);
  const refusals = answer.kind === "refused" ? answer.refusals : [];
  return (
    <div className={styles.page} data-worked={answer.kind === "worked" || undefined}>
      <PageHead above={<Link href="/worksheets" prefetch={false}>Worksheets</Link>} title={name} sentence={question} />
      <ErrorSummary errors={errorsOf(kind, refusals)} attempt={JSON.stringify(asked)} id={RESULT} />
      {kinds.length > 1 && <Kinds worksheet={worksheet} kinds={kinds} chosen={kind.key} />}
      <div className={styles.columns}>
        <div className={styles.entry}>
          <SheetForm worksheet={worksheet} kind={kind} asked={asked} refusals={refusals} />
        </div>
        <div className={styles.result} id={refusals.length > 0 ? undefined : RESULT}>
          {answer.kind === "worked" ? <SheetResult worked={answer.worked} drawing={answer.drawing} isBeside={worksheet === "area"} /> : <NothingYet isRefused={answer.kind === "refused"} />}
        </div>
      </div>
      <Foot company={company.name} />
    </div>
  );
}

function Kinds({ worksheet, kinds, chosen }: { readonly worksheet: WorksheetName; readonly kinds: readonly SheetKind[]; readonly chosen: string }) {
  return (
    <nav className={styles.kinds} aria-label="What is asked">
      <ul>
        {kinds.map(({ key, name }) => (
          <li key={key}>
            <Link href={`${worksheetPath(worksheet)}?kind=${key}`} prefetch={false} aria-current={key === chosen ? "page" : undefined}>
              {name}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}

interface FormProps {
  readonly worksheet: WorksheetName;
  readonly kind: SheetKind;
  readonly asked: Asked;
  readonly refusals: readonly InputRefusal[];
}

/** The form sends itself to its own address, so that a worked sheet can be kept, shared and gone back to. */
function SheetForm({ worksheet, kind, asked, refusals }: FormProps) {
  const path = worksheetPath(worksheet);
  return (
    <Sheet>
      {/* Another address makes a new form: what the browser shows is what the address says. */}
      <form key={JSON.stringify(asked)} method="get" action={`${path}#${RESULT}`} aria-label={kind.name}>
        <input type="hidden" name="kind" value={kind.key} />
        <Stack gap={5}>
          <SheetFields fields={kind.fields} typed={kind.typedIn(asked)} refusals={refusals} />
          <Row>
            <Button kind="act" type="submit">
              Work it out
            </Button>
            <LinkButton href={`${path}?${kind.exampleQuery}`}>Fill in an example</LinkButton>
          </Row>
          <div className={styles.offPaper}>
            <Text size="small" tone="second">
              The example is from {kind.exampleFrom}.
            </Text>
          </div>
        </Stack>
      </form>
    </Sheet>
  );
}

function NothingYet({ isRefused }: { readonly isRefused: boolean }) {
  return (
    <div className={styles.offPaper}>
      <Text tone="second">
        {isRefused ? "Nothing is worked out until every answer can be read." : "Fill in the fields and press Work it out. Printed now, this is an empty sheet to fill in by hand."}
      </Text>
    </div>
  );
}

/** An error without a field of its own stands at the first. */
function errorsOf(kind: SheetKind, refusals: readonly InputRefusal[]) {
  const first = kind.fields[0]?.name ?? "";
  return refusals.map(({ field, sentence }) => ({ fieldId: kind.fields.some(({ name }) => name === field) ? field : first, sentence }));
}

function Foot({ company }: { readonly company: string }) {
  return (
    <div className={styles.foot}>
      <Text size="small" tone="second">
        The label is the law: where it says something else, it holds. State and local rules on nutrients, sprays and water hold beside it. Figures are
        rounded where they are written, not where they are used.
      </Text>
      <p className={styles.onPaper}>
        <span>{company}</span>
        <span>Worked by</span>
        <span>Date</span>
      </p>
    </div>
  );
}
