import { type LawnOnFile } from "#application/properties/read-property";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { BLOOM_SEEN_WORDS } from "#domain/properties/lawn-look";
import { EmptyState } from "#ui/empty-state";
import { Table } from "#ui/table";
import { memberOfPage } from "../../../session";
import { clockOf } from "../../visits/[visitId]/visit-words";

/** So many of the latest looks are shown; all stay on file. */
const MOST_LOOKS = 10;

/** What was seen on the lawns, the latest look first. */
export async function SeenOnGround({ lawns }: { readonly lawns: readonly LawnOnFile[] }) {
  const { company } = await memberOfPage();
  const looks = lawns.flatMap(({ letter, name, looks: own }) => own.map((look) => ({ ...look, lawn: `${letter} ${name}` })));
  const latest = looks.toSorted((one, other) => other.seenAtEpochMilliseconds - one.seenAtEpochMilliseconds).slice(0, MOST_LOOKS);
  return (
    <Table
      caption="Seen on the lawns"
      captionSpoken
      columns={[
        { id: "at", head: "Seen" },
        { id: "lawn", head: "Lawn" },
        { id: "blooms", head: "Flowers" },
        { id: "water", head: "Water" },
        { id: "said", head: "In words" },
        { id: "by", head: "Seen by" },
      ]}
      rows={latest.map((look) => ({
        id: look.lawnLookId,
        cells: {
          at: `${formatShortDate(look.seenOn)}, ${clockOf(look.seenAtEpochMilliseconds, company.timeZone)}`,
          lawn: look.lawn,
          blooms: BLOOM_SEEN_WORDS[look.blooms],
          water: look.watering?.words ?? "",
          said: look.said ?? "",
          by: look.seenBy,
        },
      }))}
      empty={<EmptyState sentence="Nobody has written down what blooms here or that it was watered in. The page of a visit asks for it, for all of its lawns at once." />}
    />
  );
}
