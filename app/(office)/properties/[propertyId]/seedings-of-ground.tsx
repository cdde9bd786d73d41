import { type LawnOnFile } from "#application/properties/read-property";
import { type SeedingOnFile } from "#application/properties/seedings-on-file";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { SEEDING_STANDING_WORDS, seedingWords } from "#domain/properties/lawn-seeding";
import { LinkButton } from "#ui/button";
import { EmptyState } from "#ui/empty-state";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";

interface Props {
  readonly propertyId: string;
  readonly lawns: readonly LawnOnFile[];
  readonly mayChange: boolean;
}

/** Seed and sod of some lawns, done and planned, the latest day first. */
export function SeedingsOfGround({ propertyId, lawns, mayChange }: Props) {
  const all = lawns.flatMap((lawn) => lawn.seedings.map((onFile) => ({ ...onFile, lawn })));
  const latestFirst = all.toSorted((one, other) => other.seeding.date.localeCompare(one.seeding.date));
  return (
    <Stack gap={4}>
      <Table
        caption="Seed and sod"
        captionSpoken
        columns={[
          { id: "on", head: "On" },
          { id: "lawn", head: "Lawn" },
          { id: "what", head: "What" },
          { id: "standing", head: "Stands" },
        ]}
        rows={latestFirst.map((onFile) => ({
          id: onFile.seedingId,
          ...(mayChange ? { href: `/properties/${propertyId}/lawns/${onFile.lawn.zoneId}/seedings/${onFile.seedingId}/change-seeding` } : {}),
          cells: {
            on: formatShortDate(onFile.seeding.date),
            lawn: `${onFile.lawn.letter} ${onFile.lawn.name}`,
            what: seedingWords(onFile.seeding),
            standing: standingWords(onFile),
          },
        }))}
        empty={<EmptyState sentence={`No seed or sod is on file: ${lawns.length === 1 ? "this lawn is" : "the lawns are"} taken as old. Overseeding belongs here too, for labels count their waiting times from it.`} />}
      />
      {mayChange && lawns.length > 0 && (
        <Row>
          {lawns.map(({ zoneId, letter }) => (
            <LinkButton key={zoneId} href={`/properties/${propertyId}/lawns/${zoneId}/add-seeding`}>
              {lawns.length === 1 ? "Add seed or sod" : `Add seed or sod on lawn ${letter}`}
            </LinkButton>
          ))}
        </Row>
      )}
    </Stack>
  );
}

function standingWords({ seeding, isOverdue }: SeedingOnFile): string {
  return isOverdue ? "Planned, and its day has passed: say whether it was done" : SEEDING_STANDING_WORDS[seeding.standing];
}
