import { type Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { readCalibration } from "#application/equipment/read-calibration";
import { type CalibrationWorking } from "#domain/equipment/calibration-working";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { formatRate } from "#domain/quantities/format-rate";
import { LinkButton } from "#ui/button";
import { PageHead } from "#ui/page-head";
import { Section } from "#ui/section";
import { Sheet } from "#ui/sheet";
import { Stack } from "#ui/stack";
import { asMember } from "../../../../../../session";
import { pageFor } from "../../../../../page-for";
import { FindingOf } from "../../../finding-of";
import { setupWords } from "../../../gear-words";
import styles from "./working.module.css";

export const metadata: Metadata = { title: "Calibration" };

interface Props {
  readonly params: Promise<{ readonly equipmentId: string; readonly calibrationId: string }>;
}

export default async function CalibrationPage({ params }: Props) {
  await pageFor("equipment/read-calibration");
  const { equipmentId, calibrationId } = await params;
  const answer = await asMember(readCalibration, { calibrationId });
  if (!answer.ok || answer.value.calibration.equipment.id !== equipmentId) notFound();
  const { calibration, lastGoodDay, hasRunOut, working, findings } = answer.value;
  const base = `/crew/gear/${equipmentId}`;
  return (
    <>
      <PageHead
        above={<Link href={base}>{calibration.equipment.name}</Link>}
        title={formatRate(calibration.figures.rate, "us")}
        sentence={
          <>
            Measured by <strong>{calibration.operator.name}</strong> on {formatShortDate(calibration.doneOn)} with {setupWords(calibration)}.{" "}
            {hasRunOut ? <strong>It was good through {formatShortDate(lastGoodDay)}.</strong> : `Good through ${formatShortDate(lastGoodDay)}.`}
          </>
        }
        actions={<LinkButton href={`${base}/calibrate`}>Calibrate again</LinkButton>}
      />
      {findings.length > 0 && (
        <Section id="care" name="What to watch">
          <Stack gap={4}>
            {findings.map((finding) => (
              <FindingOf key={`${finding.rule} ${finding.about.join(" ")}`} finding={finding} />
            ))}
          </Stack>
        </Section>
      )}
      {working !== null && (
        <Section id="working" name="How it was figured">
          <Sheet>
            <Working working={working} />
          </Sheet>
        </Section>
      )}
    </>
  );
}

function Working({ working }: { readonly working: CalibrationWorking }) {
  return (
    <Stack gap={5}>
      <p>{working.formula}</p>
      <Stack gap={2}>
        <h3>What was measured</h3>
        <ul>
          {working.measured.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Stack>
      <Stack gap={2}>
        <h3>Step by step</h3>
        <ol className={styles.steps}>
          {working.steps.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ol>
      </Stack>
      <p>
        <strong>{working.result}</strong>
      </p>
    </Stack>
  );
}
